import { capabilityLeast } from '@/shared/plan/limits/control-charts'
import { capabilityAsked } from '@/shared/plan/parameters/control-charts'
import { formatAgainst, formatNumber } from '@/shared/quantity/format'
import { undetermined, verdictOn, type Judged, type Margin, type Part } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import {
  capabilityOf,
  FEWEST_FOR_CAPABILITY,
  newestStretch,
  type LogCapability,
  type NewestStretch,
  CAPABILITY_CONFIDENCE,
} from '@/shared/charts/capability-of-log'
import { limitedLogs, limitedReads, type LimitedLog } from '@/shared/charts/limited-logs'

export const processCapabilityRule = rule({
  id: 'process-capability',
  title: 'Capability of the process',
  why: 'Readings inside the limits today promise nothing for tomorrow unless the process is steady and its spread leaves room. Capability says how much room, and how surely it is known.',
  stage: 'control',
  version: 2,
  reads: { ...limitedReads, asked: optional(capabilityAsked), least: capabilityLeast },
  judge(inputs): Judged {
    const { asked, least } = inputs
    if (asked !== true) return notApplicable('This programme asks for no proof of capability.')
    const limit = `Cpk of at least ${formatNumber(least.value)} with ${CAPABILITY_CONFIDENCE * 100} % confidence, on a log without a point beyond its control limits (${namedRuling(least)}).`
    const questions = limitedLogs(inputs)
      .filter(({ series }) => series.values.length > 0)
      .map(answered)
    if (questions.length === 0)
      return undetermined(
        'No log has readings and a specified window yet: there is nothing to hold the spread against.',
        [`${FEWEST_FOR_CAPABILITY} readings in a process log, and its window specified`],
        limit,
      )
    const parts = questions.map((question) => partOf(question, least.value))
    return judgedByParts({
      parts,
      noun: 'logs',
      limit,
      working: questions.flatMap(workingOf),
      sources: [
        { cite: 'NIST/SEMATECH e-Handbook 6.1.6: capability indices', how: 'published' },
        { cite: 'A. F. Bissell, Applied Statistics 39 (1990) 331: bound of Cpk', how: 'from memory' },
        sourceOf(least),
      ],
      notes: [
        'Readings from before the newest fresh start of a log’s chart are left out.',
        'Spread is taken from the moving range of successive readings: readings that follow close upon each other look steadier than the process is.',
        'The index presumes a normal spread; look at the chart before believing it.',
      ],
    })
  },
})

/** A question with the capability of its log as it runs now, worked out once. */
interface Answered extends LimitedLog {
  readonly stretch: NewestStretch
  readonly capability: LogCapability | undefined
}

function answered(question: LimitedLog): Answered {
  const stretch = newestStretch(question.series, question.phases)
  return {
    ...question,
    stretch,
    capability: capabilityOf(stretch.values, question.window, CAPABILITY_CONFIDENCE),
  }
}

/** Proven by the bound: meets. By the estimate alone: marginal. On an unstable log: no answer. */
function partOf({ what, series, stretch, capability }: Answered, leastCpk: number): Part {
  const subject = `Log ${series.log.code} (${what})`
  const since = stretch.since === undefined ? '' : ` since “${stretch.since}”`
  if (!capability)
    return {
      subject,
      verdict: 'undetermined',
      found:
        stretch.values.length < FEWEST_FOR_CAPABILITY
          ? `${stretch.values.length} readings${since}, of the ${FEWEST_FOR_CAPABILITY} that a capability needs.`
          : 'the readings show no spread: the instrument is too coarse to tell a capability.',
    }
  const { study, pointsBeyond } = capability
  const { cpk, cpkLowerBound } = study.shortTerm
  const found = `Cpk ${formatAgainst(cpk, leastCpk, '1').found}, with ${CAPABILITY_CONFIDENCE * 100} % confidence at least ${formatAgainst(cpkLowerBound, leastCpk, '1').found}; long-term Ppk ${formatNumber(study.longTerm.cpk, 3)}, ${study.readings} readings${since}.`
  if (!study.speaksForTheFuture)
    return {
      subject,
      verdict: 'undetermined',
      found: `the log is unstable (${pointsBeyond} points beyond the control limits), so its capability promises nothing. ${found}`,
      remedy: { says: 'Find and remove the causes of the signals, then take readings anew.' },
    }
  const margin: Margin = {
    found: cpkLowerBound,
    limit: leastCpk,
    unit: '1',
    direction: 'at least',
    guardBand: 0,
  }
  if (verdictOn(margin) === 'meets') return { subject, verdict: 'meets', found, margin }
  if (cpk >= leastCpk)
    return {
      subject,
      verdict: 'marginal',
      found: `${found} Likely, not shown: more readings narrow the bound.`,
      remedy: { says: 'Take more readings while the process stays as it is.' },
    }
  return {
    subject,
    verdict: 'fails',
    found,
    margin: { ...margin, found: cpk },
    remedy: {
      says: 'Bring the mean to the middle of the window and lessen the spread, or let design widen the window.',
    },
  }
}

function workingOf({ what, series, window, capability }: Answered): Judged['working'] {
  if (!capability) return []
  const { mean, shortTerm } = capability.study
  return [
    {
      label: `Log ${series.log.code} (${what})`,
      formula: 'Cpk = min(upper − mean, mean − lower) / 3σ, σ = mean moving range / 1.128',
      numbers: `mean ${formatNumber(mean, 6)}, σ ${formatNumber(shortTerm.sigma.sigma, 4)}, window ${window.least?.value ?? '−∞'} to ${window.most?.value ?? '∞'}`,
      result: formatNumber(shortTerm.cpk, 4),
    },
  ]
}
