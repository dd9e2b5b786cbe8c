import { chartRules } from '@/shared/plan/parameters/control-charts'
import { fluxControlMethod } from '@/shared/plan/parameters/control-flux'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import { columnSeries } from '@/shared/records/log-series'
import { answerTo, type SignalAnswer } from '@/shared/records/signal-answers'
import { undetermined, worstVerdict, type Judged, type Part } from '@/shared/rules/finding'
import { notAsked } from '@/shared/rules/not-asked'
import { optional, rule } from '@/shared/rules/rule'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'
import { logChart, readingText, type LogSignal } from './log-chart'
import { beyondLimits, canBeCharted, FEWEST_TO_CHART } from './log-signals'
import { processLogs, signalAnswers } from './records-read'
import { keepsBath } from './soldering-baths'

/**
 * What stays level while nothing is wrong. The rest has no level to chart: metals
 * build up in a bath, irons of several settings share a log, a profile is one
 * run, the season moves a store; their own rules judge them.
 */
const LEVEL: readonly CharacteristicKey[] = [
  'flux-density',
  'flux-acid-number',
  'bath-temperature',
  'wave-contact',
  'wave-geometry',
  'wave-preheat',
]

const LIMITS_RULE = WESTERN_ELECTRIC_1956[0].id

export const chartSignalsAnsweredRule = rule({
  id: 'chart-signals-answered',
  title: 'Chart signals answered',
  why: 'A signal says that something changed, inside the limits or not. Found while it is fresh, its cause can be removed; left alone, the chart is wallpaper.',
  stage: 'control',
  version: 1,
  reads: {
    asked: optional(chartRules),
    process: optional(solderingProcess),
    fluxControl: optional(fluxControlMethod),
    logs: processLogs,
    answers: signalAnswers,
  },
  judge({ asked = 'limits', process, fluxControl, logs, answers }): Judged {
    const wanted = asked === 'zones' ? WESTERN_ELECTRIC_1956.map(({ id }) => id as string) : [LIMITS_RULE]
    const limit = `Every signal (${wanted.join(', ')}) of a log that stays level has a recorded cause and action.`
    const level = LEVEL.flatMap((key) => logs.get(key) ?? []).filter(({ readings }) => readings.count > 0)
    if (level.length === 0) {
      if (!keepsBath(process) && fluxControl !== 'density' && fluxControl !== 'acid-number')
        return notAsked('Nothing that would be charted is run: no bath, no liquid flux that is read.')
      return undetermined(
        'No log is kept yet of flux, bath temperature, wave or preheat: there is nothing to chart.',
        ['readings in a process log'],
        limit,
      )
    }
    const charted = level.map((log) => judgeLog(log, asked === 'zones', answers))
    const parts = charted.map(({ part }) => part)
    const pointsSeen = charted.some(({ drawn }) => drawn)
    const sources = [WESTERN_ELECTRIC_1956[0].source, CHART_SOURCE]
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
    const verdict = worstVerdict(parts.map((part) => part.verdict))
    const worst = parts.find((part) => part.verdict === verdict)!
    const total = charted.reduce((sum, { signals }) => sum + signals, 0)
    const open = charted.reduce((sum, { unanswered }) => sum + unanswered, 0)
    return {
      verdict,
      found:
        open > 0
          ? `${open} of ${total} signals are unanswered. ${worst.subject}: ${worst.found}`
          : `${total} signals on ${level.length} logs, each answered.`,
      limit,
      working: [
        {
          label: 'Individuals chart',
          formula: 'mean ± 3 · mean moving range / 1.128',
          result: `${level.length} logs, ${total} signals, ${open} without an answer`,
        },
      ],
      sources,
      remedy: worst.remedy,
      parts,
      notes: [
        ...(asked === 'limits'
          ? [
              'The zone rules are drawn on the chart; this programme asks an answer only for points beyond the limits.',
            ]
          : []),
        'About 3 in 1000 points lie beyond the limits while nothing has changed, and more where readings follow close upon each other: "looked for, no cause found" is an answer.',
        'Bath metals, irons, store and thermal profiles are not charted here; their own rules judge them.',
        'Density is charted as read: a signal may be the temperature of the flux; if so, say so.',
      ],
    }
  },
})

const CHART_SOURCE: Judged['sources'][number] = {
  cite: 'NIST/SEMATECH e-Handbook 6.3.2.2: individuals control charts',
  how: 'published',
}

type Sounded = Pick<LogSignal, 'chartRule' | 'says' | 'instant'>
const textOf = ({ instant }: Sounded): string => readingText(instant)

interface JudgedLog {
  readonly part: Part
  readonly drawn: boolean
  readonly signals: number
  readonly unanswered: number
}

function judgeLog(log: Log, zones: boolean, answers: readonly SignalAnswer[]): JudgedLog {
  const characteristic = CHARACTERISTICS[log.characteristic as CharacteristicKey]
  const subject = `Log ${log.code} (${characteristic.label})`
  const { instants, values } = columnSeries(log, characteristic.charted)
  if (!canBeCharted(values)) {
    const found =
      values.length < FEWEST_TO_CHART
        ? `${values.length} readings are too few to chart; they are judged against their window only.`
        : `all ${values.length} readings are alike: the instrument may be too coarse to show the spread.`
    return { part: { subject, verdict: 'meets', found }, drawn: false, signals: 0, unanswered: 0 }
  }
  const signals: readonly Sounded[] = zones
    ? logChart(log).signals
    : beyondLimits(log, characteristic).map((place) => ({
        chartRule: LIMITS_RULE,
        says: WESTERN_ELECTRIC_1956[0].says,
        instant: instants[place]!,
      }))
  const open = signals.filter(
    ({ chartRule, instant }) => !answerTo(answers, { log: log.code, chartRule, instant }),
  )
  const first = open[0]
  const part: Part = first
    ? {
        subject,
        verdict: 'fails',
        found: `${open.length} unanswered, the first ${first.chartRule} on ${textOf(first)} (${first.says}).`,
        remedy: { says: remedyFor(log, first) },
      }
    : {
        subject,
        verdict: 'meets',
        found: `${values.length} readings, ${signals.length} signals, all answered.`,
      }
  return { part, drawn: true, signals: signals.length, unanswered: open.length }
}

const remedyFor = ({ code }: Log, signal: Sounded): string =>
  `Answer ${signal.chartRule} of ${textOf(signal)} on log ${code}: what changed then, and what was done about it and about the boards soldered meanwhile.`
