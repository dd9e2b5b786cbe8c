import type { Lot } from '@/shared/records/lot'
import type { Deposit, PlatingPlace } from '@/shared/methods/plating-thickness'
import { memory } from '@/shared/memo'
import { sortTests, type SortedTests, type TestDemands } from '@/shared/sampling/test-status'

/** Readings of one deposit at one kind of place of a lot. */
export interface PlatingReadings {
  readonly lot: Lot
  readonly deposit: Deposit
  readonly place: PlatingPlace
  readonly thicknessesUm: readonly number[]
  readonly specimens: number
  readonly instrumentIds: ReadonlySet<string>
  /** The largest uncertainty stated for a reading; undefined where none is stated. */
  readonly uncertaintyUm: number | undefined
}

export interface PlatingOfLot {
  readonly lot: Lot
  readonly groups: readonly PlatingReadings[]
  readonly tests: SortedTests
}

/** A lot's plating readings by deposit and place; tests that do not count are left out and named. */
export function platingOf(lot: Lot, demands: TestDemands): PlatingOfLot {
  const { instruments, calibrations } = demands.instruments
  return knownPlating(lot, [instruments, calibrations], () => readPlating(lot, demands))
}
/** Solderability conditions do not bear on thickness: only an instrument can set a test aside. */
const knownPlating = memory<Lot, PlatingOfLot>(1)

function readPlating(lot: Lot, demands: TestDemands): PlatingOfLot {
  const tests = sortTests(lot, 'plating-thickness', demands)
  const groups = new Map<
    string,
    { readings: number[]; specimens: Set<string>; instrumentIds: Set<string>; uncertaintyUm?: number }
  >()
  for (const { conditions, readings, instrumentId } of tests.standing) {
    const places = readings.columns['place'] ?? []
    const specimens = readings.columns['specimen'] ?? []
    const thicknesses = readings.columns['thicknessUm'] ?? []
    const { uncertaintyUm } = conditions
    for (let row = 0; row < readings.count; row++) {
      const thickness = thicknesses[row]
      if (typeof thickness !== 'number') continue
      const key = `${String(conditions['deposit'])}\n${String(places[row])}`
      const group = groups.get(key) ?? {
        readings: [],
        specimens: new Set<string>(),
        instrumentIds: new Set<string>(),
      }
      groups.set(key, group)
      group.readings.push(thickness)
      if (instrumentId !== null) group.instrumentIds.add(instrumentId)
      group.specimens.add(String(specimens[row] ?? ''))
      if (typeof uncertaintyUm === 'number') {
        group.uncertaintyUm = Math.max(group.uncertaintyUm ?? 0, uncertaintyUm)
      }
    }
  }
  const made = [...groups].map(([key, { readings, specimens, instrumentIds, uncertaintyUm }]) => {
    const [deposit, place] = key.split('\n') as [Deposit, PlatingPlace]
    return {
      lot,
      deposit,
      place,
      thicknessesUm: readings,
      specimens: specimens.size,
      instrumentIds,
      uncertaintyUm,
    }
  })
  return { lot, groups: made, tests }
}
