import type { Lot } from '@/shared/records/lot'
import type { Deposit, PlatingPlace } from '@/shared/methods/plating-thickness'
import { memory } from '@/shared/memo'
import { sortTests, type CountingInputs, type SortedTests } from '@/shared/lot-tests/counted-tests'

/** Readings of one deposit at one kind of place of a lot. */
export interface PlatingReadings {
  readonly lot: Lot
  readonly deposit: Deposit
  readonly place: PlatingPlace
  /** The readings of each specimen by itself. */
  readonly bySpecimen: readonly (readonly number[])[]
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
export const platingOf = (lot: Lot, inputs: CountingInputs): PlatingOfLot =>
  knownPlating(lot, [inputs.instruments, inputs.calibrations], () => readPlating(lot, inputs))
/** Solderability conditions do not bear on thickness: only an instrument can set a test aside. */
const knownPlating = memory<Lot, PlatingOfLot>(1)

function readPlating(lot: Lot, inputs: CountingInputs): PlatingOfLot {
  const tests = sortTests(lot, 'plating-thickness', inputs)
  const groups = new Map<
    string,
    { specimens: Map<string, number[]>; instrumentIds: Set<string>; uncertaintyUm?: number }
  >()
  for (const { conditions, readings, instrumentId } of tests.counted) {
    const places = readings.columns['place'] ?? []
    const specimens = readings.columns['specimen'] ?? []
    const thicknesses = readings.columns['thicknessUm'] ?? []
    const { uncertaintyUm } = conditions
    for (let row = 0; row < readings.count; row++) {
      const thickness = thicknesses[row]
      if (typeof thickness !== 'number') continue
      const key = `${String(conditions['deposit'])}\n${String(places[row])}`
      const group = groups.get(key) ?? {
        specimens: new Map<string, number[]>(),
        instrumentIds: new Set<string>(),
      }
      groups.set(key, group)
      if (instrumentId !== null) group.instrumentIds.add(instrumentId)
      const specimen = String(specimens[row] ?? '')
      const own = group.specimens.get(specimen)
      if (own) own.push(thickness)
      else group.specimens.set(specimen, [thickness])
      if (typeof uncertaintyUm === 'number') {
        group.uncertaintyUm = Math.max(group.uncertaintyUm ?? 0, uncertaintyUm)
      }
    }
  }
  const made = [...groups].map(([key, { specimens, instrumentIds, uncertaintyUm }]) => {
    const [deposit, place] = key.split('\n') as [Deposit, PlatingPlace]
    return {
      lot,
      deposit,
      place,
      bySpecimen: [...specimens.values()],
      instrumentIds,
      uncertaintyUm,
    }
  })
  return { lot, groups: made, tests }
}
