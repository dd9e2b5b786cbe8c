import { BATH_LIMITS, type BathLimits } from '@/shared/materials/bath-contaminants'
import { BATH_CONSTITUENTS } from '@/shared/materials/bath-constituents'
import {
  bathAnalysisInterval,
  bathSumMost,
  leadFreeBathLimits,
  tinLeadBathLimits,
} from '@/shared/plan/limits/control-bath'
import { bathLimitEdition } from '@/shared/plan/parameters/control-bath'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { Ruling } from '@/shared/plan/requirement'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { bathComposition as characteristic } from '@/shared/records/characteristics/bath-composition'
import { worstVerdict, type Judged, type Part, type WorkingLine } from '@/shared/rules/finding'
import { notAsked } from '@/shared/rules/not-asked'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { limitReads, metalRulings, questionsOn, type BathQuestion } from './bath-questions'
import { FEWEST_FOR_TREND, trendTowards, type LogTrend } from './log-trend'
import { guardBandOf } from './logged-window'
import { HOT_SOLDER_CAUTIONS, keepsBath } from './soldering-baths'

const CONFIDENCE = 0.95

/** One metal (or the sum) of one bath with its trend since the last exchange. */
interface Trended {
  readonly question: BathQuestion
  readonly limit: number
  readonly trend: LogTrend
}

export const bathTrendRule = rule({
  id: 'bath-trend',
  title: 'When the bath will reach its limits',
  why: 'Contaminants rise board by board. Their trend says when the bath must be exchanged, so that it is planned and not found out by a failed analysis.',
  stage: 'control',
  version: 1,
  reads: {
    family: alloyFamily,
    process: optional(solderingProcess),
    alloy: optional(solderAlloy),
    edition: optional(bathLimitEdition),
    interval: bathAnalysisInterval,
    sumMost: bathSumMost,
    logs: logsOf(characteristic),
    ...limitReads('tin-lead', tinLeadBathLimits),
    ...limitReads('lead-free', leadFreeBathLimits),
  },
  judge(inputs): Judged {
    const { family, process, alloy, edition, interval, logs } = inputs
    if (!keepsBath(process)) return notAsked('No solder bath is kept in this programme.')
    const chosen = edition && edition !== 'strictest' ? (BATH_LIMITS[edition] as BathLimits) : undefined
    if (chosen && chosen.family !== family)
      return notAsked('The edition chosen is for another alloy family: the composition is judged first.')
    const onPurpose: readonly string[] = alloy ? BATH_CONSTITUENTS[alloy].onPurpose : []
    const byName = inputs as unknown as Readonly<Record<string, Ruling | undefined>>
    const metals = metalRulings(family, byName, chosen).filter(({ metal }) => !onPurpose.includes(metal))
    const sum =
      family === 'tin-lead' && (!chosen || chosen.sumMost !== undefined) ? inputs.sumMost : undefined
    const trended = logs.flatMap((log) => questionsOn(log, metals, () => 0, sum)).flatMap(trendOf)
    if (trended.length === 0)
      return notAsked(
        `No bath has ${FEWEST_FOR_TREND} analyses since its last exchange: there is no trend to tell yet.`,
      )
    const limit = `No metal may reach its limit, with ${CONFIDENCE * 100} % confidence, before the next analysis falls due: ${formatQuantity(interval.value, 'days')} (${namedRuling(interval)}).`
    const parts = trended.map((one) => partOf(one, interval.value))
    const verdict = worstVerdict(parts.map((part) => part.verdict))
    const soonest = trended.reduce((first, one) => (soonness(one) < soonness(first) ? one : first))
    const worst = parts[trended.indexOf(soonest)]!
    return {
      verdict,
      found: `${worst.subject}: ${worst.found}`,
      limit,
      ...(worst.margin && { margin: worst.margin }),
      working: workingOf(soonest),
      sources: [
        { cite: 'Least squares with the prediction bound of one further reading', how: 'computed' },
        sourceOf(interval),
      ],
      ...(worst.remedy && { remedy: worst.remedy }),
      parts,
      notes: [
        'The trend starts anew after a fall of more than a tenth of the limit: an exchange.',
        'A straight line presumes the same boards at the same pace; a busier month reaches the limit sooner.',
      ],
      cautions: HOT_SOLDER_CAUTIONS,
    }
  },
})

function trendOf(question: BathQuestion): Trended[] {
  const limit = question.window.most?.value
  if (limit === undefined) return []
  const trend = trendTowards(question.series, limit, {
    resetFall: guardBandOf(question.window),
    confidence: CONFIDENCE,
  })
  return trend ? [{ question, limit, trend }] : []
}

const soonness = ({ trend }: Trended): number => trend.daysByPrediction ?? Infinity

/** Never `fails`: the bath still holds. A crossing before the next analysis is due is marginal. */
function partOf({ question, trend }: Trended, intervalDays: number): Part {
  const { subject } = question
  const { mayCrossOn, crossesOn, perMonth, daysByPrediction } = trend
  const pace = `${perMonth < 0 ? 'falls' : 'rises'} by ${formatNumber(Math.abs(perMonth), 3)} % of mass a month`
  if (daysByPrediction === undefined)
    return { subject, verdict: 'meets', found: `${pace}; the limit is not in sight within ten years.` }
  const found = `${pace}; the limit may be reached on ${mayCrossOn}${crossesOn ? `, by the line on ${crossesOn}` : ''}.`
  if (daysByPrediction < intervalDays)
    return {
      subject,
      verdict: 'marginal',
      found,
      remedy: { says: `Analyse again before ${mayCrossOn}, and plan the exchange of solder for then.` },
    }
  return {
    subject,
    verdict: 'meets',
    found,
    margin: {
      found: daysByPrediction,
      limit: intervalDays,
      unit: 'days',
      direction: 'at least',
      guardBand: 0,
    },
  }
}

const workingOf = ({ question, limit, trend }: Trended): WorkingLine[] => [
  {
    label: `${question.subject}: line through ${trend.readings} analyses`,
    formula: 'c = a + b · days',
    numbers: `a = ${formatNumber(trend.fit.intercept)} %, b = ${formatNumber(trend.fit.slope)} % a day, spread about it ${formatNumber(trend.fit.residualSigma)} %`,
    result: `limit ${formatQuantity(limit, '%')}: by the line ${trend.crossesOn ?? 'not in sight'}, at the earliest ${trend.mayCrossOn ?? 'not in sight'}`,
  },
]
