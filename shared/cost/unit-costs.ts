import { solderingProcess, processCosts } from '@/shared/plan/parameters/soldering-process'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import type { Parameter } from '@/shared/plan/parameter'
import type { RecordOf } from '@/shared/records/record-kinds'
import { amountOf, exactly, isKnown, type KnownAmount, type StoredAmount } from './amount'

/** What one of something costs, and on what the figure rests. */
export interface UnitCost {
  readonly amount: KnownAmount
  readonly basis: string
}

export interface UnitCosts {
  readonly rework: UnitCost | undefined
  readonly fieldRepair: UnitCost | undefined
}

/**
 * What one rework and one repair in service cost: the mean of what this
 * programme recorded, or, where nothing priced is recorded, what the cost table
 * of its process expects, which may be a range. Undefined where neither says.
 */
export function unitCosts(
  values: ReadonlyMap<string, unknown>,
  records: {
    readonly rework: readonly RecordOf<'rework'>[]
    readonly returns: readonly RecordOf<'field-return'>[]
  },
): UnitCosts {
  const read = <T>(parameter: Parameter<T>): T | undefined => values.get(parameter.key) as T | undefined
  const hour = read(workingHourCost)
  const expected = read(processCosts)?.find(({ process }) => process === read(solderingProcess))
  const reworked = records.rework.map(
    ({ minutes, material }) => (minutes / 60) * (hour ?? 0) + (material ?? 0),
  )
  const repaired = records.returns.flatMap(({ cost }) => (cost === undefined ? [] : [cost]))
  return {
    rework:
      hour !== undefined && reworked.length > 0
        ? {
            amount: exactly(meanOf(reworked)),
            basis: `mean of ${reworked.length} recorded, an hour at ${hour}`,
          }
        : expectedCost(expected?.perRework),
    fieldRepair:
      repaired.length > 0
        ? { amount: exactly(meanOf(repaired)), basis: `mean of ${repaired.length} returns with a cost` }
        : expectedCost(expected?.perFieldRepair),
  }
}

function expectedCost(stored: StoredAmount): UnitCost | undefined {
  const amount = amountOf(stored)
  return isKnown(amount) ? { amount, basis: 'expected by the cost table of the process' } : undefined
}

const meanOf = (amounts: readonly number[]): number =>
  amounts.reduce((sum, amount) => sum + amount, 0) / amounts.length
