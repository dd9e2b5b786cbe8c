import type { RecordOf } from '@/shared/records/record-kinds'
import { assembliesMade } from '@/shared/records/soldering-work'
import { NO_AMOUNT, sumOf, times, type KnownAmount } from './amount'
import type { UnitCosts } from './unit-costs'

/** What a change to one joint of the board would cost on a day. */
export interface ChangeCost {
  readonly on: string
  /** Boards soldered by then, and how many of them serve. */
  readonly made: number
  readonly serving: number
  readonly atHand: number
  readonly cost: KnownAmount
}

interface DatedFacts {
  readonly runs: readonly RecordOf<'soldering-run'>[]
  readonly exposures: readonly RecordOf<'field-exposure'>[]
}

/**
 * The cost of changing one joint on every board there is on a day: a rework for
 * each board at hand, a repair in service for each that serves. Before the first
 * board it is the drawing only. Boards that serve are those of the newest period
 * begun by then. New approvals and scrapped parts are not counted, so it is the
 * least it would cost. Undefined where a unit cost that is needed is not known.
 */
export function changeCostOn(
  on: string,
  { runs, exposures }: DatedFacts,
  unit: UnitCosts,
): ChangeCost | undefined {
  const made = assembliesMade(runs.filter(({ doneOn }) => doneOn <= on))
  const begun = exposures.filter(({ from }) => from <= on).toSorted((a, b) => (a.from < b.from ? -1 : 1))
  const serving = Math.min(made, begun.at(-1)?.boards ?? 0)
  const atHand = made - serving
  if ((atHand > 0 && !unit.rework) || (serving > 0 && !unit.fieldRepair)) return undefined
  const cost = sumOf([
    times(unit.rework?.amount ?? NO_AMOUNT, atHand),
    times(unit.fieldRepair?.amount ?? NO_AMOUNT, serving),
  ]) as KnownAmount
  return { on, made, serving, atHand, cost }
}

/** The same on every day on which it changed, from a first day to a last. */
export function changeCostOverTime(
  facts: DatedFacts,
  unit: UnitCosts,
  { from, to }: { readonly from: string; readonly to: string },
): ChangeCost[] {
  const days = [
    from,
    ...facts.runs.map(({ doneOn }) => doneOn),
    ...facts.exposures.map((one) => one.from),
    to,
  ]
  return [...new Set(days)]
    .filter((day) => day >= from && day <= to)
    .sort()
    .flatMap((day) => changeCostOn(day, facts, unit) ?? [])
}
