import { commonPractice } from '@/shared/sources/provenance'
import type { Lot } from '@/shared/records/lot'
import { isUsable, lotName, aboutLot } from '@/shared/records/lot-identity'
import { methodName } from '@/shared/methods/test-methods'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { acceptableQualityLevel, inspectionLevel } from '@/shared/plan/parameters/evaluation-sampling'
import { optional, rule } from '@/shared/rules/rule'
import { whyNotCounted, type CountingInputs } from '@/shared/lot-tests/counted-tests'
import { sampledLimits } from '@/shared/lot-tests/sampled-methods'
import { testInWords, testKey, untried } from '@/shared/lot-tests/tests-asked'
import { resultsOfLots, type ResultsOfLot } from '@/shared/sampling/results-of-lots'
import { samplingReads } from '@/shared/sampling/sampling-reads'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { count } from '@/shared/rules/measure'

const LIMIT_SAYS =
  'the supplier’s own result on file for every lot, and a result of ours beside it that does not contradict it'

export const supplierResultsReaffirmed = rule({
  id: 'supplier-results-reaffirmed',
  title: 'Supplier’s result verified',
  why: 'A supplier tests what left the line; transport and store come after. His result saves nothing unless a test here has confirmed it for this lot.',
  formula: 'supplier’s result repeated by a test of one’s own within the time allowed, and agreeing',
  stage: 'evaluation',
  version: 6,
  reads: {
    ...samplingReads,
    ...sampledLimits,
    // Without a plan a test still stands beside the supplier's; only whether the lot passed is then open.
    needed: optional(lotsNeeded),
    level: optional(inspectionLevel),
    aql: optional(acceptableQualityLevel),
  },
  judge(inputs): Judged {
    const usable = inputs.lots.filter(isUsable)
    if (usable.length === 0) {
      return undetermined(
        'No lot that may be used is recorded yet.',
        ['a lot, with what its supplier states'],
        LIMIT_SAYS,
      )
    }
    const { needed, level, aql } = inputs
    const resultsOf = needed && level && aql && resultsOfLots({ ...inputs, needed, level, aql })
    const spoken = spokenByWorst(usable.map((lot) => partOf(lot, inputs, resultsOf?.(lot))))
    return {
      ...spoken,
      found:
        spoken.verdict === 'meets'
          ? `The supplier’s result is reaffirmed for every lot (${usable.length}).`
          : spoken.found,
      measured: { lots: count(usable.length) },
      limit: LIMIT_SAYS,
      working: [],
      sources: [
        commonPractice(
          'A certificate names lot, date code, finish, ageing and date, and a test of the lot reaffirms it',
        ),
      ],
      notes: [
        'The supplier’s result is kept as stated. Compare its conditions with ours before setting the two side by side.',
      ],
    }
  },
})

/** Papers and markings reaffirm a consumable; a surface or a laminate has to be tried. */
const messageSomethingOf = (lot: Lot, method: string): boolean =>
  lot.kind === 'consumable' || method !== 'receiving-check'

function partOf(lot: Lot, inputs: CountingInputs, results: ResultsOfLot | undefined): Part {
  const rejectedBy = results?.failed ?? []
  const common = { subject: lotName(lot), about: aboutLot(lot) }
  const counting = lot.tests.filter(
    (test) => messageSomethingOf(lot, test.method) && whyNotCounted(lot, test, inputs) === undefined,
  )
  const stated = lot.supplierResult.trim()
  if (stated === '') {
    return {
      ...common,
      verdict: 'undetermined',
      found: 'came without a result of the supplier’s.',
      remedy: {
        message: 'Ask the supplier for the result of this lot, or say in the lot that none was agreed.',
      },
    }
  }
  if (counting.length === 0) {
    return {
      ...common,
      verdict: 'undetermined',
      found: `states “${stated}”; no test of ours that counts stands beside it.`,
      remedy: { message: 'Test a sample of the lot here.' },
    }
  }
  if (rejectedBy.length > 0) {
    return {
      ...common,
      verdict: 'fails',
      measured: { stated, rejectedBy: rejectedBy.map(testKey) },
      found: `states “${stated}”; not reaffirmed: here it failed by ${rejectedBy.map(testInWords).join(', ')}.`,
      remedy: {
        message:
          'Rely on the result found here, tell the supplier with the readings, and dispose of the lot.',
      },
    }
  }
  const methods = [...new Set(counting.map(({ method }) => method))]
  const missing = untried(lot, methods, inputs)
  if (missing.length > 0) {
    return {
      ...common,
      verdict: 'undetermined',
      measured: { stated, untried: missing.map(testKey) },
      found: `states “${stated}”; not tried here by ${missing.map(testInWords).join(', ')}.`,
      remedy: { message: 'Test a sample of the lot under that condition too.' },
    }
  }
  return {
    ...common,
    verdict: 'meets',
    measured: { stated, testedBy: methods },
    found: `states “${stated}”; tested here by ${methods.map(methodName).join(', ')}.`,
  }
}
