import { type TrendedMetal, trendOf } from '@/shared/baths/metal-trend'
import { bathAnalysisInterval, trendConfidenceMin } from '@/shared/plan/limits/control-bath'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { bathComposition as characteristic } from '@/shared/records/characteristics/bath-composition'
import { undetermined, type Judged, type Part, type WorkingLine } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf, recordsOf } from '@/shared/rules/record-source'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { MACHINE_WORK } from '@/shared/logs/runs-held'
import { daysOfWork } from '@/shared/records/soldering-work'
import { bathLimitReads, bathQuestions, chosenEdition } from '@/shared/baths/bath-limits'
import { FEWEST_FOR_TREND, sinceLastFall } from '@/shared/logs/log-trend'
import { guardBandOf } from '@/shared/logs/logged-window'
import type { BathQuestion } from '@/shared/baths/bath-questions'
import { HOT_SOLDER_CAUTIONS, keepsBath } from '@/shared/plan/soldering-baths'
import { count, measure } from '@/shared/rules/measure'
import { worstPart } from '@/shared/rules/worst-part'

export const bathTrendRule = rule({
  id: 'bath-trend',
  title: 'When the bath will reach its limits',
  why: 'Contaminants rise board by board. Their trend says when the bath must be exchanged, so that it is planned and not found out by a failed analysis.',
  formula:
    'c = a + b · t by least squares since the last exchange; the one-sided prediction bound reaches the limit after the next analysis',
  stage: 'control',
  version: 2,
  reads: {
    ...bathLimitReads,
    process: optional(solderingProcess),
    interval: bathAnalysisInterval,
    confidence: trendConfidenceMin,
    runs: recordsOf('soldering-run', 'soldering runs'),
    logs: logsOf(characteristic),
  },
  judge(inputs): Judged {
    const { family, process, interval, confidence, runs, logs } = inputs
    if (!keepsBath(process)) return notApplicable('No solder bath is kept in this programme.')
    const chosen = chosenEdition(inputs)
    if (chosen && chosen.family !== family)
      return notApplicable('The edition chosen is for another alloy family: the composition is judged first.')
    const questions = bathQuestions(inputs, logs)
    const trended = questions.flatMap((question) => trendOf(question, confidence.value / 100))
    const limit = `No metal may reach its limit, with ${formatNumber(confidence.value, 4)} % confidence (${governingName(confidence)}), before the next analysis falls due: ${formatQuantity(interval.value, 'days')} (${governingName(interval)}).`
    if (trended.length === 0)
      return daysOfWork(runs, MACHINE_WORK.skills).length === 0
        ? notApplicable('Nothing has been soldered by machine yet, and no bath has a trend to tell.')
        : tooFew(questions, limit)
    const parts = trended.map((one) => partOf(one, interval.value))
    const worst = worstPart(parts)
    return {
      verdict: worst.verdict,
      found: `${worst.subject}: ${worst.found}`,
      limit,
      ...(worst.margin && { margin: worst.margin }),
      working: workingOf(trended[parts.indexOf(worst)]!),
      sources: [
        { cite: 'Least squares with the prediction bound of one further reading', how: 'computed' },
        sourceOf(interval),
        sourceOf(confidence),
      ],
      ...(worst.remedy && { remedy: worst.remedy }),
      parts,
      notes: [
        'The trend starts again after a fall of more than a tenth of the limit: an exchange.',
        'A straight line presumes the same boards at the same pace; a busier month reaches the limit sooner.',
      ],
      cautions: HOT_SOLDER_CAUTIONS,
    }
  },
})

/** Boards are soldered, and no bath has been analysed often enough since its last exchange: how many more it takes. */
function tooFew(questions: readonly BathQuestion[], limit: string): Judged {
  const max = Math.max(
    0,
    ...questions.map(({ series, window }) => sinceLastFall(series, guardBandOf(window))),
  )
  const more = FEWEST_FOR_TREND - max
  return {
    ...undetermined(
      `No bath has ${FEWEST_FOR_TREND} analyses since its last exchange: there is no trend to tell yet.`,
      [`${more} more ${more === 1 ? 'analysis' : 'analyses'} of the bath, on days of their own`],
      limit,
    ),
    measured: { analyses: count(max), more: count(more) },
  }
}

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
  const common = {
    subject,
    about,
    measured,
    found: `${pace}; the limit may be reached on ${mayCrossOn}${crossesOn ? `, by the line on ${crossesOn}` : ''}.`,
    margin: {
      found: daysByPrediction,
      limit: intervalDays,
      unit: 'days',
      direction: 'at least',
      guardBand: 0,
    } as const,
  }
  if (daysByPrediction >= intervalDays) return { ...common, verdict: 'meets' }
  return {
    ...common,
    verdict: 'marginal',
    remedy: { message: `Analyse again before ${mayCrossOn}, and plan the exchange of solder for then.` },
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
