import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import type { InstrumentFile } from '@/shared/instruments/calibration-status'
import type { LogSeries } from './log-series'
import { excursionsFrom, marginIn, windowInWords, type ProcessWindow } from './logged-window'
import { instrumentDoubt, intervalInWords, runsPart, type Work } from './runs-held'
import { answerTo, OUTSIDE_WINDOW, type SignalAnswer } from './signal-answers'
import type { Judged, Part } from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { dayOf } from './log-day'

interface Question {
  /** With which a sentence can begin: "Bath temperature". */
  readonly what: string
  readonly series: readonly LogSeries[]
  readonly window: ProcessWindow
  readonly answers: readonly SignalAnswer[]
  readonly instruments: InstrumentFile
  /** What to do about a newest reading on the wrong side. */
  readonly mend?: (newest: number, log: LogSeries) => string | undefined
  /** Where to record, for a log that has nothing yet. */
  readonly recordIn: string
  /** The runs that the readings are taken for. */
  readonly work: Work
}

/**
 * Judges logs against a process window: the newest reading of each log must lie
 * inside, read by an instrument in calibration; every earlier excursion must
 * have been answered; and every run of the work must have had a reading inside,
 * in time before it. Limits that cross leave nothing inside and fail.
 */
export function judgeLoggedWindow(question: Question): Omit<Judged, 'working' | 'sources'> {
  const { what, series, window, recordIn, work } = question
  const limit = `${windowInWords(window)} ${intervalInWords(work)}`
  const filled = series.filter(({ values }) => values.length > 0)
  if (filled.length === 0)
    return {
      verdict: 'undetermined',
      found: `${what}: no reading is recorded yet. Record one in ${recordIn}.`,
      limit,
      missing: [recordIn],
    }
  const spoken = spokenByWorst([
    ...filled.map((one) => judgeSeries(one, question)),
    runsPart(work, filled, question),
  ])
  const unnamed = filled.filter(({ log }) => log.instrumentId === null).map(({ log }) => log.code)
  return {
    ...spoken,
    found: `${what}: ${spoken.found}`,
    limit,
    notes: [
      ...(unnamed.length > 0
        ? [`No instrument is named for ${unnamed.join(', ')}: calibration was not checked.`]
        : []),
      ...(work.runs.some(({ begunAtH }) => begunAtH === undefined)
        ? ['A run that states no hour is held against the readings of its day.']
        : []),
    ],
  }
}

type Subject = Pick<Part, 'subject' | 'about'>

/** A log as what a part is about, or one thing read from it: the key and the words for that. */
export const logSubject = ({ code }: Log, of?: { readonly key: string; readonly words: string }): Subject =>
  of
    ? { subject: `Log ${code}, ${of.words}`, about: { log: code, of: of.key } }
    : { subject: `Log ${code}`, about: { log: code } }

/**
 * One series against its window: the newest value, the excursions before it, and
 * the instrument that read the newest: every other reading that a run rests on is
 * asked for its own by `runsPart`. What fails stays failing whoever reads next.
 */
export function judgeSeries(
  series: LogSeries,
  { window, answers, instruments, mend }: Pick<Question, 'window' | 'answers' | 'instruments' | 'mend'>,
  named: Subject = logSubject(series.log),
): Part {
  const { log, instants, values } = series
  const last = values.length - 1
  const newest = values[last]!
  const on = dayOf(log, instants[last]!)
  const { verdict, margin } = marginIn(window, newest)
  const printed = margin
    ? formatAgainst(newest, margin.limit, window.unit).found
    : formatQuantity(newest, window.unit)
  const reading = `${printed} on ${on} (log ${log.code})`
  const measured = { newest: measure(newest, window.unit), on }

  if (verdict === 'fails')
    return {
      ...named,
      verdict,
      measured,
      found: `${reading} lies outside.`,
      margin,
      remedy: remedyFrom(mend?.(newest, series)),
    }
  const open = excursionsFrom(values, window).filter(
    ({ first }) =>
      !answerTo(answers, { log: log.code, chartRule: OUTSIDE_WINDOW, instant: instants[first]! }),
  )
  const firstOpen = open[0]
  if (firstOpen) {
    const since = new Date(instants[firstOpen.first]!).toISOString()
    return {
      ...named,
      verdict: 'fails',
      measured: { ...measured, unanswered: count(open.length), since },
      found: `${reading} lies inside, but ${counted(open.length, 'earlier excursion')} from ${dayOf(log, Date.parse(since))} on went unanswered.`,
      margin,
      remedy: {
        message: `Answer the excursion of ${since} in log ${log.code} (chart rule "${OUTSIDE_WINDOW}"): what caused it, and what became of the boards soldered then.`,
      },
    }
  }
  const doubt = instrumentDoubt(series, last, window, instruments)
  if (doubt !== undefined)
    return {
      ...named,
      verdict: 'undetermined',
      measured,
      found: `${reading} proves nothing: ${doubt}.`,
      margin,
      remedy: { message: 'Read it again with an instrument in calibration, named in the log.' },
    }
  return {
    ...named,
    verdict,
    measured,
    found: `${reading} lies inside${verdict === 'marginal' ? ', close to a limit' : ''}.`,
    margin,
  }
}

const remedyFrom = (message: string | undefined): Part['remedy'] =>
  message === undefined ? undefined : { message }

const counted = (times: number, noun: string): string => `${times} ${noun}${times === 1 ? '' : 's'}`
