import { wettingBalance } from '@/shared/methods/wetting-balance'
import type { Lot } from '@/shared/records/lot'
import type { Inputs } from '@/shared/rules/rule'
import { curvesOfTest } from '@/shared/wetting/curves-of-test'
import { endsUnwetted } from '@/shared/wetting/wetting-curve'
import { askedOf, sampledMethods, type sampledLimits } from './asked-methods'
import { seriesOf } from './lot-sampling'
import { contextFrom, demandsFrom, type SamplingInputs } from './sampling-reads'
import { sortTests, type TestDemands } from './test-status'

/** What the solderability and receiving tests of a lot came to, by their keys. */
export interface ResultsOfLot {
  readonly failed: readonly string[]
  /** Asked for or begun, and not decided. */
  readonly open: readonly string[]
  readonly passed: readonly string[]
}
type Outcome = keyof ResultsOfLot

const NOTHING: ResultsOfLot = { failed: [], open: [], passed: [] }

/** The results of every lot, by its id: samples as their plan decides them, and whether a balance found it unwetted. */
export function resultsOfLots(
  inputs: SamplingInputs & Inputs<typeof sampledLimits>,
): (lot: Pick<Lot, 'id'>) => ResultsOfLot {
  const results = new Map<string, ResultsOfLot>()
  const add = ({ id }: Lot, outcome: Outcome, method: string) => {
    const known = results.get(id) ?? NOTHING
    results.set(id, { ...known, [outcome]: [...known[outcome], method] })
  }
  const context = contextFrom(inputs)
  const isAsked = askedOf(inputs.needed)
  for (const { method, limit } of sampledMethods(inputs)) {
    for (const { lot, sample } of seriesOf(inputs.lots, method, limit, context).flatMap(({ lots }) => lots)) {
      if (!sample && !isAsked(lot, method.key)) continue
      const decided = sample?.outcome.decided
      add(lot, decided === undefined ? 'open' : decided === 'rejected' ? 'failed' : 'passed', method.key)
    }
  }
  const demands = demandsFrom(inputs)
  for (const lot of inputs.lots) {
    const outcome = onBalance(lot, demands, isAsked(lot, wettingBalance.key))
    if (outcome) add(lot, outcome, wettingBalance.key)
  }
  return ({ id }) => results.get(id) ?? NOTHING
}

/** A balance decides by itself only one thing: that a surface does not wet at all. */
function onBalance(lot: Lot, demands: TestDemands, asked: boolean): Outcome | undefined {
  const { counted } = sortTests(lot, wettingBalance.key, demands)
  if (counted.length === 0) return asked ? 'open' : undefined
  const read = counted.map(curvesOfTest)
  if (read.some((curves) => typeof curves !== 'string' && curves.some(endsUnwetted))) return 'failed'
  return read.some((curves) => typeof curves === 'string' || curves.length === 0) ? 'open' : 'passed'
}
