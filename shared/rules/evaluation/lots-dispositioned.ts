import { commonPractice } from '@/shared/sources/provenance'
import type { Lot } from '@/shared/records/lot'
import { lotName, aboutLot } from '@/shared/records/lot-identity'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { rule, type Inputs } from '@/shared/rules/rule'
import { judgePlatingGroup } from '@/shared/plating/judge-plating-group'
import { platingThickness } from '@/shared/methods/plating-thickness'
import { platingOf } from '@/shared/plating/plating-readings'
import { platingDemandReads, platingReads } from '@/shared/plating/plating-reads'
import { sampledLimits } from '@/shared/lot-tests/sampled-methods'
import { askedOf, testInWords, testKey, type TestAsked } from '@/shared/lot-tests/tests-asked'
import { resultsOfLots } from '@/shared/sampling/results-of-lots'
import { samplingReads } from '@/shared/sampling/sampling-reads'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { count } from '@/shared/rules/measure'

const SOURCE = commonPractice(
  'A lot is accepted, rejected or allowed under concession, by quality, on its results',
)
const LIMIT_SAYS =
  'every lot accepted, rejected or allowed under concession, and none accepted against its own results'

const reads = {
  ...samplingReads,
  ...platingReads,
  ...sampledLimits,
  ...platingDemandReads,
} as const

export const lotsDispositioned = rule({
  id: 'lots-dispositioned',
  title: 'Lot disposition',
  why: 'A lot on the shelf without a decision is used sooner or later, and one accepted against its results takes them along into every board.',
  formula: 'every lot with a result is accepted or rejected by someone entitled, as its result says',
  stage: 'evaluation',
  version: 5,
  reads,
  judge(inputs): Judged {
    if (inputs.lots.length === 0) {
      return undetermined('No lot is recorded yet.', ['a lot, with its disposition'], LIMIT_SAYS)
    }
    const restsOn = resultsFrom(inputs)
    const spoken = spokenByWorst(inputs.lots.map((lot) => partOf(lot, restsOn(lot))))
    const disposed = (verdict: string) =>
      inputs.lots.filter(({ disposition }) => disposition?.verdict === verdict).length
    return {
      ...spoken,
      found:
        spoken.verdict === 'meets'
          ? `Every lot (${inputs.lots.length}) is disposed of: ${disposed('accept')} accepted, ${disposed('reject')} rejected.`
          : spoken.found,
      measured: {
        lots: count(inputs.lots.length),
        accepted: count(disposed('accept')),
        rejected: count(disposed('reject')),
      },
      limit: LIMIT_SAYS,
      working: [],
      sources: [SOURCE],
    }
  },
})

/** What a disposition rests on: tests, and deposits by their keys. */
interface Results {
  readonly failed: readonly TestAsked[]
  readonly failedDeposits: readonly string[]
  readonly open: readonly TestAsked[]
  readonly openDeposits: readonly string[]
  /** Whether any result speaks for the lot. */
  readonly any: boolean
}

function resultsFrom(inputs: Inputs<typeof reads>): (lot: Lot) => Results {
  const testsOf = resultsOfLots(inputs)
  const isAsked = askedOf(inputs.needed)
  return (lot) => {
    const { failed, open, passed } = testsOf(lot)
    const judged = platingOf(lot, inputs).groups.map((group) => ({
      deposit: group.deposit,
      verdict: judgePlatingGroup(group, inputs).part.verdict,
    }))
    const depositsOf = (verdict: string) =>
      judged.flatMap((one) => (one.verdict === verdict ? [one.deposit] : []))
    const unmeasured = judged.length === 0 && isAsked(lot, platingThickness.key)
    return {
      failed,
      failedDeposits: depositsOf('fails'),
      open: unmeasured ? [...open, PLATING] : open,
      openDeposits: depositsOf('undetermined'),
      any: failed.length + passed.length + judged.length > 0,
    }
  }
}

const PLATING: TestAsked = { method: platingThickness.key, condition: undefined, stated: [] }

/** Tests and deposits as they are named in a sentence. */
const named = (tests: readonly TestAsked[], deposits: readonly string[]): string[] => [
  ...tests.map(testInWords),
  ...deposits.map((deposit) => `thickness of ${deposit}`),
]

function partOf(lot: Lot, { failed, failedDeposits, open, openDeposits, any }: Results): Part {
  const { disposition } = lot
  const failures = named(failed, failedDeposits)
  const undecided = named(open, openDeposits)
  const common = {
    subject: lotName(lot),
    about: aboutLot(lot),
    measured: {
      ...(disposition && { ...disposition }),
      failed: failed.map(testKey),
      failedDeposits,
      open: open.map(testKey),
      openDeposits,
      any,
    },
  }
  if (disposition === null) {
    return {
      ...common,
      verdict: 'undetermined',
      found:
        failures.length > 0
          ? `failed by ${failures.join(', ')}, and is not yet disposed of.`
          : 'not yet disposed of.',
      remedy: { message: 'Quality accepts it, rejects it, or allows it under concession, with a reason.' },
    }
  }
  if (disposition.verdict === 'reject') {
    return { ...common, verdict: 'meets', found: `rejected on ${disposition.on}: ${disposition.reason}` }
  }
  if (disposition.verdict === 'use under concession') {
    return {
      ...common,
      verdict: 'marginal',
      found: `allowed under concession by ${disposition.by} on ${disposition.on}: ${disposition.reason}`,
    }
  }
  if (failures.length > 0) {
    return {
      ...common,
      verdict: 'fails',
      found: `accepted by ${disposition.by} although it failed by ${failures.join(', ')}.`,
      remedy: { message: 'Reject it, or allow it under concession with the reason why it is tolerable.' },
    }
  }
  if (undecided.length > 0) {
    return {
      ...common,
      verdict: 'undetermined',
      found: `accepted by ${disposition.by} before these were decided: ${undecided.join(', ')}.`,
      remedy: { message: 'Complete the tests.' },
    }
  }
  if (!any) {
    return {
      ...common,
      verdict: 'undetermined',
      found: `accepted by ${disposition.by} on ${disposition.on} without any result of a test here.`,
      remedy: { message: 'Test a sample of the lot, or record its receiving check.' },
    }
  }
  return { ...common, verdict: 'meets', found: `accepted by ${disposition.by} on ${disposition.on}.` }
}
