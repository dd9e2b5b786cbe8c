import { wettingBalance } from '@/shared/methods/wetting-balance'
import type { Lot } from '@/shared/records/lot'
import type { Inputs } from '@/shared/rules/rule'
import { curvesOfTest } from '@/shared/wetting/curves-of-test'
import { endsTooSoon, endsUnwetted } from '@/shared/wetting/wetting-curve'
import { askedOf, sampledMethods, type sampledLimits } from './asked-methods'
import { seriesOf } from './lot-sampling'
import { contextFrom, demandsFrom, type SamplingInputs } from './sampling-reads'
import { testsAsked, type TestAsked } from './test-asked'
import { sortTests, type TestDemands } from './test-status'

/** What the solderability and receiving tests of a lot came to. */
export interface ResultsOfLot {
  readonly failed: readonly TestAsked[]
  /** Asked for or begun, and not decided. */
  readonly open: readonly TestAsked[]
  readonly passed: readonly TestAsked[]
}
type Outcome = keyof ResultsOfLot

const NOTHING: ResultsOfLot = { failed: [], open: [], passed: [] }

/** The results of every lot, by its id: samples as their plan decides them, and whether a balance found it unwetted. */
export function resultsOfLots(
  inputs: SamplingInputs & Inputs<typeof sampledLimits>,
): (lot: Pick<Lot, 'id'>) => ResultsOfLot {
  const results = new Map<string, ResultsOfLot>()
  const add = ({ id }: Lot, outcome: Outcome, test: TestAsked) => {
    const known = results.get(id) ?? NOTHING
    results.set(id, { ...known, [outcome]: [...known[outcome], test] })
  }
  const context = contextFrom(inputs)
  const isAsked = askedOf(inputs.needed)
  for (const { method, limit } of sampledMethods(inputs)) {
    for (const { lots, condition, stated } of seriesOf(inputs.lots, method, limit, context)) {
      for (const { lot, sample } of lots) {
        if (!sample && !isAsked(lot, method.key)) continue
        const decided = sample?.outcome.decided
        const outcome = decided === undefined ? 'open' : decided === 'rejected' ? 'failed' : 'passed'
        add(lot, outcome, { method: method.key, condition, stated })
      }
    }
  }
  const demands = demandsFrom(inputs)
  for (const lot of inputs.lots) {
    const asked = isAsked(lot, wettingBalance.key)
    for (const test of testsAsked(lot, wettingBalance.key, demands)) {
      const outcome = onBalance(lot, demands, test, asked)
      if (outcome) add(lot, outcome, test)
    }
  }
  return ({ id }) => results.get(id) ?? NOTHING
}

/** A balance decides by itself only one thing: that a surface does not wet at all. */
function onBalance(
  lot: Lot,
  demands: TestDemands,
  { condition }: TestAsked,
  asked: boolean,
): Outcome | undefined {
  const { counted } = sortTests(lot, wettingBalance.key, demands, condition)
  if (counted.length === 0) return asked ? 'open' : undefined
  const read = counted.map(curvesOfTest)
  if (read.some((curves) => typeof curves !== 'string' && curves.some(endsUnwetted))) return 'failed'
  return read.some((curves) => typeof curves === 'string' || curves.length === 0 || curves.some(endsTooSoon))
    ? 'open'
    : 'passed'
}
