import { commonPractice } from '@/shared/sources/provenance'
import { platingConfidenceLeast, platingCoverageLeast } from '@/shared/plan/limits/evaluation-plating'
import type { Lot } from '@/shared/records/lot'
import { lotName, aboutLot } from '@/shared/records/lot-identity'
import { methodName } from '@/shared/methods/test-methods'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { rule, type Inputs } from '@/shared/rules/rule'
import { judgePlatingGroup } from '@/shared/plating/judge-plating-group'
import { seriesOf } from '@/shared/sampling/lot-sampling'
import { platingOf } from '@/shared/plating/plating-readings'
import { platingReads, specificationFrom } from '@/shared/plating/plating-reads'
import { sampledLimits, sampledMethods } from '@/shared/sampling/asked-methods'
import { contextFrom, demandsFrom, fractionOf, samplingReads } from '@/shared/sampling/sampling-reads'
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
  platingCoverage: platingCoverageLeast,
  platingConfidence: platingConfidenceLeast,
} as const

export const lotsDispositioned = rule({
  id: 'lots-dispositioned',
  title: 'Every lot disposed of on its results',
  why: 'A lot on the shelf without a decision is used sooner or later, and one accepted against its results takes them along into every board.',
  formula: 'every lot with a result is accepted or rejected by someone entitled, as its result says',
  stage: 'evaluation',
  version: 2,
  reads,
  judge(inputs): Judged {
    if (inputs.lots.length === 0) {
      return undetermined('No lot is recorded yet.', ['a lot, with its disposition'], LIMIT_SAYS)
    }
    const against = failuresByLot(inputs)
    const spoken = spokenByWorst(inputs.lots.map((lot) => partOf(lot, against.get(lot.id) ?? NO_FAILURES)))
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

/** What speaks against a lot: results that failed, and tests not finished. */
interface AgainstLot {
  /** Tests by their keys. */
  readonly failed: readonly string[]
  readonly failedDeposits: readonly string[]
  readonly open: readonly string[]
}
const NO_FAILURES: AgainstLot = { failed: [], failedDeposits: [], open: [] }

function failuresByLot(inputs: Inputs<typeof reads>): ReadonlyMap<string, AgainstLot> {
  const against = new Map<string, { failed: string[]; failedDeposits: string[]; open: string[] }>()
  const of = (lot: Lot) => {
    const known = against.get(lot.id) ?? { failed: [], failedDeposits: [], open: [] }
    against.set(lot.id, known)
    return known
  }
  const context = contextFrom(inputs)
  for (const { method, limit } of sampledMethods(inputs)) {
    for (const { lot, sample } of seriesOf(inputs.lots, method, limit, context).flatMap(({ lots }) => lots)) {
      if (sample?.outcome.decided === 'rejected') of(lot).failed.push(method.key)
      if (sample && sample.outcome.decided === undefined) of(lot).open.push(method.key)
    }
  }
  const demands = demandsFrom(inputs)
  const specification = specificationFrom(inputs)
  const content = {
    coverage: fractionOf(inputs.platingCoverage),
    confidence: fractionOf(inputs.platingConfidence),
  }
  for (const lot of inputs.lots) {
    for (const group of platingOf(lot, demands).groups) {
      const { verdict } = judgePlatingGroup(group, specification, content).part
      if (verdict === 'fails') of(lot).failedDeposits.push(group.deposit)
    }
  }
  return against
}

function partOf(lot: Lot, { failed, failedDeposits, open }: AgainstLot): Part {
  const { disposition } = lot
  const failures = [...failed.map(methodName), ...failedDeposits.map((deposit) => `thickness of ${deposit}`)]
  const common = {
    subject: lotName(lot),
    about: aboutLot(lot),
    measured: { ...(disposition && { ...disposition }), failed, failedDeposits, open },
  }
  if (disposition === null) {
    return {
      ...common,
      verdict: 'undetermined',
      found:
        failures.length > 0
          ? `failed by ${failures.join(', ')}, and is not yet disposed of.`
          : 'not yet disposed of.',
      remedy: { says: 'Quality accepts it, rejects it, or allows it under concession, with a reason.' },
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
      remedy: { says: 'Reject it, or allow it under concession with the reason why it is tolerable.' },
    }
  }
  if (open.length > 0) {
    return {
      ...common,
      verdict: 'undetermined',
      found: `accepted by ${disposition.by} before its sample was complete: ${open.map(methodName).join(', ')}.`,
      remedy: { says: 'Complete the sample.' },
    }
  }
  return { ...common, verdict: 'meets', found: `accepted by ${disposition.by} on ${disposition.on}.` }
}
