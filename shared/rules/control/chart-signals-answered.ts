import { formatNumber } from '@/shared/quantity/format'
import { chartPhases, chartRules, processCharts } from '@/shared/plan/parameters/control-charts'
import { fluxControlMethod } from '@/shared/plan/parameters/control-flux'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import { LEVEL_CHARACTERISTICS } from '@/shared/logs/level-characteristics'
import { answerTo, type SignalAnswer } from '@/shared/logs/signal-answers'
import { undetermined, type Judged, type Part } from '@/shared/rules/finding'
import { allLogs } from '@/shared/rules/record-source'
import { decidingPart } from '@/shared/rules/parts'
import { notApplicable } from '@/shared/rules/not-applicable'
import { optional, rule } from '@/shared/rules/rule'
import { specifiedChart, type ChosenChart } from '@/shared/charts/chart-choice'
import { minuteAtWorks } from '@/shared/logs/log-day'
import { FEWEST_TO_CHART } from '@/shared/charts/chart-stretches'
import { chartedReads, chartedSeries, type ChartedInputs } from '@/shared/logs/charted-series'
import { chartLabel } from '@/shared/charts/chart-words'
import { LOG_CHARTS } from '@/shared/charts/kinds/log-charts'
import { askedSignals, canBeCharted, type Charting, type LogSignal } from '@/shared/charts/log-chart'
import { chartResets, signalAnswers } from '@/shared/rules/log-record-sources'
import { falseSignalsExpected, RUN_RULE_SETS, USUAL_RUN_RULES } from '@/shared/charts/run-rule-sets'
import { keepsBath } from '@/shared/plan/soldering-baths'
import { count } from '@/shared/rules/measure'

export const chartSignalsAnsweredRule = rule({
  id: 'chart-signals-answered',
  title: 'Chart signals answered',
  why: 'A signal says that something changed, inside the limits or not. Found while it is fresh, its cause can be removed; left alone, the chart is wallpaper.',
  formula: 'every signal of the chosen charts and run rules has an answer',
  stage: 'control',
  version: 4,
  reads: {
    asked: optional(chartRules),
    charts: optional(processCharts),
    phases: optional(chartPhases),
    resets: chartResets,
    ...chartedReads,
    process: optional(solderingProcess),
    fluxControl: optional(fluxControlMethod),
    logs: allLogs,
    answers: signalAnswers,
  },
  judge({
    asked = USUAL_RUN_RULES,
    charts,
    phases,
    resets,
    process,
    fluxControl,
    logs,
    answers,
    ...brought
  }): Judged {
    const set = RUN_RULE_SETS[asked]
    const limit = `Every signal (${set.asked.map(({ message }) => message).join('; ')}) of a log that stays level has a recorded cause and action.`
    const level = LEVEL_CHARACTERISTICS.flatMap((key) => logs.get(key) ?? []).filter(
      ({ readings }) => readings.count > 0,
    )
    if (level.length === 0) {
      if (!keepsBath(process) && fluxControl !== 'density' && fluxControl !== 'acid-number')
        return notApplicable('Nothing that would be charted is run: no bath, no liquid flux that is read.')
      return undetermined(
        'No log is kept yet of flux, bath temperature, wave or preheat: there is nothing to chart.',
        ['readings in a process log'],
        limit,
      )
    }
    const charted = level.map((log) =>
      judgeLog(log, { choice: specifiedChart(log, charts, phases, resets), rules: asked }, brought, answers),
    )
    const parts = charted.map(({ part }) => part)
    const pointsSeen = charted.some(({ drawn }) => drawn)
    const used = [...new Set(charted.map(({ chart }) => chart))]
    const sources = [set.asked[0].source, ...used.map((chart) => LOG_CHARTS[chart].source)]
    if (!pointsSeen)
      return {
        ...undetermined(
          `No log has ${FEWEST_TO_CHART} readings that differ yet: control limits cannot be drawn.`,
          [`${FEWEST_TO_CHART} readings in a log`],
          limit,
        ),
        parts,
        sources,
      }
    const worst = decidingPart(parts)!
    const { verdict } = worst
    const readings = charted.reduce((sum, one) => sum + (one.drawn ? one.readings : 0), 0)
    const total = charted.reduce((sum, { signals }) => sum + signals, 0)
    const open = charted.reduce((sum, { unanswered }) => sum + unanswered, 0)
    return {
      verdict,
      found:
        open > 0
          ? `${open} of ${total} signals are unanswered. ${worst.subject}: ${worst.found}`
          : verdict === 'undetermined'
            ? `${worst.subject}: ${worst.found}`
            : `${total} signals on ${level.length} logs, each answered.`,
      limit,
      measured: { unanswered: count(open), signals: count(total), logs: count(level.length) },
      working: [
        ...used.map((chart) => ({
          label: chartLabel(chart),
          formula: LOG_CHARTS[chart].formula,
          result: `${charted.filter((one) => one.chart === chart).length} logs`,
        })),
        { label: 'In all', result: `${level.length} logs, ${total} signals, ${open} without an answer` },
      ],
      sources,
      remedy: worst.remedy,
      ...(verdict === 'undetermined' && {
        missing: parts
          .filter((part) => part.verdict === verdict)
          .map((part) => `${part.subject}: ${part.found}`),
      }),
      parts,
      notes: [
        ...(asked === USUAL_RUN_RULES
          ? [
              'The zone rules are drawn on the chart; this programme asks an answer only for points beyond the limits.',
            ]
          : []),
        `About ${formatNumber(falseSignalsExpected(asked, readings), 2)} of the signals asked for are to be expected on these ${readings} readings while nothing has changed, and more where limits are estimated from few readings or readings follow close upon each other: "looked for, no cause found" is an answer.`,
        'Bath metals, irons, store and thermal profiles are not charted here; their own rules judge them.',
        'Charted is what the specification limits: density brought to one temperature, dwell from length and speed, the acid number from its titration.',
      ],
    }
  },
})

interface JudgedLog {
  readonly chart: ChosenChart
  readonly part: Part
  readonly drawn: boolean
  readonly readings: number
  readonly signals: number
  readonly unanswered: number
}

function judgeLog(
  log: Log,
  charting: Charting,
  brought: ChartedInputs,
  answers: readonly SignalAnswer[],
): JudgedLog {
  const characteristic = CHARACTERISTICS[log.characteristic as CharacteristicKey]
  const named = {
    subject: `Log ${log.code} (${characteristic.label})`,
    about: { log: log.code, characteristic: log.characteristic },
  }
  const series = chartedSeries(log, brought)?.series
  const { chart } = charting.choice
  const length = series?.values.length ?? 0
  if (!series || !canBeCharted(series.values)) {
    const more = FEWEST_TO_CHART - length
    const part: Part =
      more > 0
        ? {
            ...named,
            measured: { readings: count(length) },
            verdict: 'undetermined',
            found: `${length} readings are too few to chart: ${more} more.`,
            remedy: { message: `Take ${more} more readings.` },
          }
        : {
            ...named,
            measured: { readings: count(length) },
            verdict: 'not applicable',
            found: `all ${length} readings are alike: there is no spread to draw limits from.`,
          }
    return { chart, part, drawn: false, readings: length, signals: 0, unanswered: 0 }
  }
  const signals = askedSignals(series, charting)
  const open = signals.filter(
    ({ chartRule, instant }) => !answerTo(answers, { log: log.code, chartRule, instant }),
  )
  const first = open[0]
  const part: Part = first
    ? {
        ...named,
        verdict: 'fails',
        measured: {
          unanswered: count(open.length),
          first: first.chartRule,
          on: first.readingAt,
        },
        found: `${open.length} unanswered, the first: ${first.message}, ${minuteAtWorks(log, first.readingAt)}.`,
        remedy: { message: remedyFor(log, first) },
      }
    : {
        ...named,
        verdict: 'meets',
        measured: { readings: count(length), signals: count(signals.length) },
        found: `${length} readings, ${signals.length} signals, all answered.`,
      }
  return { chart, part, drawn: true, readings: length, signals: signals.length, unanswered: open.length }
}

const remedyFor = (log: Log, { message, readingAt }: LogSignal): string =>
  `Answer the signal on log ${log.code} of ${minuteAtWorks(log, readingAt)} (${message}): what changed then, and what was done about it and about the boards soldered meanwhile.`
