import { sortTests, type CountingInputs } from '@/shared/lot-tests/counted-tests'
import type { SampledLimits } from '@/shared/lot-tests/sampled-methods'
import { askedOf, testsAsked, type TestAsked } from '@/shared/lot-tests/tests-asked'
import { wettingBalance } from '@/shared/methods/wetting-balance'
import type { Lot } from '@/shared/records/lot'
import { curvesOfTest } from '@/shared/wetting/curves-of-test'
import { endsTooSoon, endsUnwetted } from '@/shared/wetting/wetting-curve'
import { allSeries } from './sampled-series'
import type { SamplingInputs } from './sampling-reads'

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
  inputs: SamplingInputs & SampledLimits,
): (lot: Pick<Lot, 'id'>) => ResultsOfLot {
  const results = new Map<string, ResultsOfLot>()
  const add = ({ id }: Lot, outcome: Outcome, test: TestAsked) => {
    const known = results.get(id) ?? NOTHING
    results.set(id, { ...known, [outcome]: [...known[outcome], test] })
  }
  for (const { lot, own, test, asked, sample } of allSeries(inputs).flatMap(({ lots }) => lots)) {
    if (!own || (!sample && !asked)) continue
    const decided = sample?.outcome.decided
    add(lot, decided === undefined ? 'open' : decided === 'rejected' ? 'failed' : 'passed', test)
  }
  const isAsked = askedOf(inputs.needed)
  for (const lot of inputs.lots) {
    const asked = isAsked(lot, wettingBalance.key)
    for (const test of testsAsked(lot, wettingBalance.key, inputs)) {
      const outcome = onBalance(lot, inputs, test, asked)
      if (outcome) add(lot, outcome, test)
    }
  }
  return ({ id }) => results.get(id) ?? NOTHING
}

/** A balance decides by itself only one thing: that a surface does not wet at all. */
function onBalance(
  lot: Lot,
  inputs: CountingInputs,
  { condition }: TestAsked,
  asked: boolean,
): Outcome | undefined {
  const { counted } = sortTests(lot, wettingBalance.key, inputs, condition)
  if (counted.length === 0) return asked ? 'open' : undefined
  const read = counted.map(curvesOfTest)
  if (read.some((curves) => typeof curves !== 'string' && curves.some(endsUnwetted))) return 'failed'
  return read.some((curves) => typeof curves === 'string' || curves.length === 0 || curves.some(endsTooSoon))
    ? 'open'
    : 'passed'
}
