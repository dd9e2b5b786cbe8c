import { TREND_CONFIDENCE, type TrendedMetal, trendOf } from '@/shared/baths/metal-trend'
import { bathAnalysisInterval } from '@/shared/plan/limits/control-bath'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { bathComposition as characteristic } from '@/shared/records/characteristics/bath-composition'
import { worstVerdict, type Judged, type Part, type WorkingLine } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { bathLimitReads, bathQuestions, chosenEdition } from '@/shared/baths/bath-limits'
import { FEWEST_FOR_TREND } from '@/shared/logs/log-trend'
import { HOT_SOLDER_CAUTIONS, keepsBath } from '@/shared/plan/soldering-baths'
import { measure } from '@/shared/rules/measure'

export const bathTrendRule = rule({
  id: 'bath-trend',
  title: 'When the bath will reach its limits',
  why: 'Contaminants rise board by board. Their trend says when the bath must be exchanged, so that it is planned and not found out by a failed analysis.',
  stage: 'control',
  version: 1,
  reads: {
    ...bathLimitReads,
    process: optional(solderingProcess),
    interval: bathAnalysisInterval,
    logs: logsOf(characteristic),
  },
  judge(inputs): Judged {
    const { family, process, interval, logs } = inputs
    if (!keepsBath(process)) return notApplicable('No solder bath is kept in this programme.')
    const chosen = chosenEdition(inputs)
    if (chosen && chosen.family !== family)
      return notApplicable('The edition chosen is for another alloy family: the composition is judged first.')
    const trended = bathQuestions(inputs, logs).flatMap(trendOf)
    if (trended.length === 0)
      return notApplicable(
        `No bath has ${FEWEST_FOR_TREND} analyses since its last exchange: there is no trend to tell yet.`,
      )
    const limit = `No metal may reach its limit, with ${TREND_CONFIDENCE * 100} % confidence, before the next analysis falls due: ${formatQuantity(interval.value, 'days')} (${namedRuling(interval)}).`
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

const soonness = ({ trend }: TrendedMetal): number => trend.daysByPrediction ?? Infinity

/** Never `fails`: the bath still holds. A crossing before the next analysis is due is marginal. */
function partOf({ question, trend }: TrendedMetal, intervalDays: number): Part {
  const { subject, about } = question
  const { mayCrossOn, crossesOn, perMonth, daysByPrediction } = trend
  const pace = `${perMonth < 0 ? 'falls' : 'rises'} by ${formatNumber(Math.abs(perMonth), 3)} % of mass a month`
  const measured = {
    perMonth: measure(perMonth, '%'),
    ...(mayCrossOn !== undefined && { mayCrossOn }),
    ...(crossesOn !== undefined && { crossesOn }),
  }
  if (daysByPrediction === undefined)
    return {
      subject,
      about,
      verdict: 'meets',
      measured,
      found: `${pace}; the limit is not in sight within ten years.`,
    }
  const found = `${pace}; the limit may be reached on ${mayCrossOn}${crossesOn ? `, by the line on ${crossesOn}` : ''}.`
  if (daysByPrediction < intervalDays)
    return {
      subject,
      about,
      verdict: 'marginal',
      measured,
      found,
      remedy: { says: `Analyse again before ${mayCrossOn}, and plan the exchange of solder for then.` },
    }
  return {
    subject,
    about,
    verdict: 'meets',
    measured,
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

const workingOf = ({ question, limit, trend }: TrendedMetal): WorkingLine[] => [
  {
    label: `${question.subject}: line through ${trend.readings} analyses`,
    formula: 'c = a + b · days',
    numbers: `a = ${formatNumber(trend.fit.intercept)} %, b = ${formatNumber(trend.fit.slope)} % a day, spread about it ${formatNumber(trend.fit.residualSigma)} %`,
    result: `limit ${formatQuantity(limit, '%')}: by the line ${trend.crossesOn ?? 'not in sight'}, at the earliest ${trend.mayCrossOn ?? 'not in sight'}`,
  },
]
