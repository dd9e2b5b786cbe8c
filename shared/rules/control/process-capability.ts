import { capabilityConfidenceMin, capabilityMin } from '@/shared/plan/limits/control-charts'
import { capabilityAsked } from '@/shared/plan/parameters/control-charts'
import { formatAgainst, formatNumber, formatQuantity } from '@/shared/quantity/format'
import {
  undetermined,
  verdictOn,
  type Judged,
  type Margin,
  type Part,
  type Measured,
} from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { judgedByParts } from '@/shared/rules/parts'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import {
  capabilityOf,
  FEWEST_FOR_CAPABILITY,
  newestStretch,
  readingsToShow,
  type LogCapability,
  type NewestStretch,
} from '@/shared/charts/capability-of-log'
import { falseSignalsExpected, RUN_RULE_SETS } from '@/shared/charts/run-rule-sets'
import { limitedLogs, limitedReads, type LimitedLog } from '@/shared/charts/limited-logs'
import { measure, count } from '@/shared/rules/measure'

export const processCapabilityRule = rule({
  id: 'process-capability',
  title: 'Capability of the process',
  why: 'Readings inside the limits today promise nothing for tomorrow unless the process is steady and its spread leaves room. Capability says how much room, and how surely it is known.',
  formula:
    'Ppk and Cpk = min(upper − mean, mean − lower)/3σ with their lower bounds ≥ least, on a log without signals',
  stage: 'control',
  version: 3,
  reads: {
    ...limitedReads,
    asked: optional(capabilityAsked),
    min: capabilityMin,
    sureness: capabilityConfidenceMin,
  },
  judge(inputs): Judged {
    const { asked, min, sureness } = inputs
    const confidence = Math.min(0.9999, sureness.value / 100)
    if (asked !== true) return notApplicable('This programme asks for no proof of capability.')
    const limit = `Cpk and Ppk of at least ${formatNumber(min.value)} (${governingName(min)}) with ${formatQuantity(sureness.value, '%')} confidence (${governingName(sureness)}), on a log that no chosen run rule signals on.`
    const questions = limitedLogs(inputs)
      .filter(({ series }) => series.values.length > 0)
      .map((question) => answered(question, confidence))
    if (questions.length === 0)
      return undetermined(
        'No log has readings and a specified window yet: there is nothing to hold the spread against.',
        [`${FEWEST_FOR_CAPABILITY} readings in a process log, and its window specified`],
        limit,
      )
    const parts = questions.map((question) => partOf(question, min.value))
    return judgedByParts({
      parts,
      noun: 'logs',
      limit,
      working: questions.flatMap(workingOf),
      sources: [
        { cite: 'NIST/SEMATECH e-Handbook 6.1.6: capability indices', how: 'published' },
        { cite: 'A. F. Bissell, Applied Statistics 39 (1990) 331: bound of Cpk', how: 'from memory' },
        sourceOf(min),
        sourceOf(sureness),
      ],
      notes: [
        'Readings from before the newest reset of a log’s chart are left out.',
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

function answered(question: LimitedLog, confidence: number): Answered {
  const { series, window, charting } = question
  const stretch = newestStretch(series, charting)
  return { ...question, stretch, capability: capabilityOf(stretch, window, charting, confidence) }
}

/** An index by its customary name, as estimated and as shown. */
interface Index {
  readonly name: 'Cpk' | 'Ppk'
  readonly index: number
  readonly lowerBound: number
  readonly readings: number
}

/** Shown by the bounds of both indices: meets. Likely only, or on an unsteady log: no answer yet. */
function partOf(
  { characteristic, what, series, stretch, charting, capability }: Answered,
  min: number,
): Part {
  const named = {
    subject: `Log ${series.log.code} (${what})`,
    about: { log: series.log.code, characteristic },
  }
  const start: Measured = stretch.since === undefined ? {} : { since: stretch.since }
  const since = stretch.since === undefined ? '' : ` since “${stretch.since}”`
  if (!capability)
    return {
      ...named,
      verdict: 'undetermined',
      measured: { readings: count(stretch.values.length), ...start },
      found:
        stretch.values.length < FEWEST_FOR_CAPABILITY
          ? `${stretch.values.length} readings${since}, of the ${FEWEST_FOR_CAPABILITY} that a capability needs.`
          : 'the readings show no spread: the instrument is too coarse to tell a capability.',
    }
  const { study, signals } = capability
  const { readings } = study
  const indices: readonly Index[] = [
    { name: 'Cpk', index: study.shortTerm.cpk, lowerBound: study.shortTerm.cpkLowerBound, readings },
    { name: 'Ppk', index: study.longTerm.cpk, lowerBound: study.longTerm.cpkLowerBound, readings },
  ]
  const found = `${indices.map((one) => inWords(one, min)).join('; ')}; ${readings} readings${since}.`
  const measured: Measured = {
    ...Object.fromEntries(
      indices.flatMap(({ name, index, lowerBound }) => [
        [name, measure(index, '1')],
        [`${name} at least`, measure(lowerBound, '1')],
      ]),
    ),
    readings: count(readings),
    signals: count(signals),
    ...start,
  }
  if (!study.speaksForTheFuture)
    return {
      ...named,
      measured,
      verdict: 'undetermined',
      found: `the log is unstable (${signals} ${signals === 1 ? 'signal' : 'signals'} by ${RUN_RULE_SETS[charting.rules].asked.map(({ id }) => id).join(', ')}; ${formatNumber(falseSignalsExpected(charting.rules, readings), 2)} false ones are to be expected of as many readings), so its capability promises nothing. ${found}`,
      remedy: { message: 'Find and remove the causes of the signals, then take readings again.' },
    }
  const tighter = indices.reduce((one, other) => (other.lowerBound < one.lowerBound ? other : one))
  const margin = marginOf(tighter.lowerBound, min)
  if (verdictOn(margin) === 'meets') return { ...named, measured, verdict: 'meets', found, margin }
  const short = indices.reduce((one, other) => (other.index < one.index ? other : one))
  if (short.index < min)
    return {
      ...named,
      measured,
      verdict: 'fails',
      found,
      margin: marginOf(short.index, min),
      remedy: {
        message:
          'Bring the mean to the middle of the window and lessen the spread, or let design widen the window.',
      },
    }
  const needed = Math.max(...indices.map((one) => readingsToShow(one, min)))
  return {
    ...named,
    measured,
    verdict: 'undetermined',
    found: `${found} Likely, not shown: ${Number.isFinite(needed) ? `about ${needed} readings in all would show it, if the process stays as it is` : 'no number of readings shows an index that lies on its limit'}.`,
    margin,
    remedy: { message: 'Take more readings while the process stays as it is.' },
  }
}

const inWords = ({ name, index, lowerBound }: Index, min: number): string =>
  `${name} ${formatAgainst(index, min, '1').found}, shown ${formatAgainst(lowerBound, min, '1').found}`

const marginOf = (found: number, limit: number): Margin => ({
  found,
  limit,
  unit: '1',
  direction: 'at least',
  guardBand: 0,
})

function workingOf({ what, series, window, capability }: Answered): Judged['working'] {
  if (!capability) return []
  const { mean, shortTerm } = capability.study
  return [
    {
      label: `Log ${series.log.code} (${what})`,
      formula: 'Cpk = min(upper − mean, mean − lower) / 3σ, σ = mean moving range / 1.128',
      numbers: `mean ${formatNumber(mean, 6)}, σ ${formatNumber(shortTerm.sigma.sigma, 4)}, window ${window.min?.value ?? '−∞'} to ${window.max?.value ?? '∞'}`,
      result: formatNumber(shortTerm.cpk, 4),
    },
  ]
}
