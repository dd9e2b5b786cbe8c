import { foldedList } from '@/shared/quantity/folded-names'
import { calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatQuantity } from '@/shared/quantity/format'
import type { SolderingRun } from '@/shared/records/soldering-work'
import type { Measured, Part } from '@/shared/rules/finding'
import { measure, count } from '@/shared/rules/measure'
import { governingName } from '@/shared/rules/governing-source'
import type { LogSeries } from './log-series'
import { excursionsFrom, marginIn, type ProcessWindow } from './logged-window'
import { mayBeOfLog, readingsOfRun, type ReadingOfRun } from './run-readings'
import { answerTo, OUTSIDE_WINDOW, type SignalAnswer } from './signal-answers'
import { dayOf } from './log-day'

/** The work that readings are taken for, and how old the newest may be then. */
export interface Work {
  readonly runs: readonly SolderingRun[]
  readonly skills: readonly SolderingRun['skill'][]
  /** "soldering by machine" */
  readonly called: string
  /** In hours. */
  readonly interval: GoverningRequirement
}

export const MACHINE_WORK = { skills: ['machine-soldering'], called: 'soldering by machine' } as const

interface Held {
  readonly window: ProcessWindow
  readonly answers: readonly SignalAnswer[]
  readonly instruments: InstrumentFile
}

/** "a reading no more than 24 h before each run (document)", for the limit line. */
export const intervalInWords = ({ interval }: Pick<Work, 'interval'>): string =>
  `A reading no more than ${formatQuantity(interval.value, 'h')} before each run (${governingName(interval)}).`

/** Why a run is not held: the reading outside, or what makes none speak for it. */
type Status =
  { readonly outside: boolean; readonly message: string; readonly measured?: Measured } | undefined

/** A run of the work, and whether it was soldered inside the window as far as the readings say. */
export interface HeldRun {
  readonly run: SolderingRun
  readonly is: 'inside' | 'outside' | 'not shown'
  /** Why it is not inside. */
  readonly message: string | undefined
  readonly measured: Measured | undefined
}

/** Every run of the work held against the readings of the logs, for the rules and for the picture of a log. */
export function runsHeld(
  { runs, skills, interval }: Work,
  logs: readonly LogSeries[],
  held: Held,
): HeldRun[] {
  const open = openExcursionsOf(logs, held)
  return runs
    .filter(({ skill }) => skills.includes(skill))
    .map((run) => {
      const status = statusOf(run, logs, interval.value, held, open)
      return {
        run,
        is: status === undefined ? 'inside' : status.outside ? 'outside' : 'not shown',
        message: status?.message,
        measured: status?.measured,
      }
    })
}

/**
 * Whether every run was soldered inside the window: a reading of its line before
 * it, within the interval, inside and by an instrument in calibration then. A
 * run on a reading outside fails until that excursion is answered; a run that no
 * reading speaks for is undetermined. The runs are named. `of` tells which of
 * several things read the part is about.
 */
export function runsPart(
  work: Work,
  logs: readonly LogSeries[],
  held: Held,
  of?: { readonly key: string; readonly words: string },
): Part {
  const { called, interval } = work
  const own = runsHeld(work, logs, held)
  const subject: Pick<Part, 'subject' | 'about'> = of
    ? { subject: `Soldering runs, ${of.words}`, about: { matter: 'soldering runs', of: of.key } }
    : { subject: 'Soldering runs', about: { matter: 'soldering runs' } }
  if (own.length === 0)
    return {
      ...subject,
      verdict: 'undetermined',
      found: `no ${called} is recorded yet: there is no day of work to hold the readings against.`,
      remedy: { message: `Record the runs of ${called}, each with its day and line.` },
    }
  const judged = own.filter(({ is }) => is !== 'inside')
  const outside = judged.filter(({ is }) => is === 'outside')
  const shown = outside.length > 0 ? outside : judged
  const first = shown[0]
  if (!first)
    return {
      ...subject,
      verdict: 'meets',
      measured: { runs: count(own.length) },
      found: `all ${own.length} had a reading inside, in time before them.`,
    }
  const named = runsInWords(shown.map(({ run }) => run))
  const measured = { runs: runsMeasured(shown.map(({ run }) => run)), ...first.measured }
  return outside.length > 0
    ? {
        ...subject,
        verdict: 'fails',
        measured,
        found: `${named}: ${first.message}.`,
        remedy: {
          message: 'Answer the excursion: what caused it, and what became of the boards of these runs.',
        },
      }
    : {
        ...subject,
        verdict: 'undetermined',
        measured,
        found: `${named}: ${first.message} (${judged.length} of ${own.length} runs).`,
        remedy: {
          message: `Record the readings that were taken; from now on read no more than ${formatQuantity(interval.value, 'h')} before the work. Where none was taken, quality decides what that work is worth.`,
        },
      }
}

/**
 * The same for something read beside the main value, where it is read at all: of
 * the runs on the lines whose logs tell of it. Nothing where none does.
 */
export function furtherRunsPart(
  work: Work,
  logs: readonly LogSeries[],
  held: Held,
  of: { readonly key: string; readonly words: string },
): Part[] {
  const told = logs.filter(({ values }) => values.length > 0)
  const runs = work.runs.filter(
    (run) => work.skills.includes(run.skill) && told.some((series) => mayBeOfLog(run, series)),
  )
  return runs.length === 0 ? [] : [runsPart({ ...work, runs }, told, held, of)]
}

const MISSING = {
  'line not named': 'the line is not named, and logs are kept of several',
  'no log of its line': 'no log of that line has a reading',
  'no reading in time': 'no reading in time before the work',
} as const

function statusOf(
  run: SolderingRun,
  logs: readonly LogSeries[],
  maxHours: number,
  held: Held,
  open: OpenExcursions,
): Status {
  const found = readingsOfRun(run, logs, maxHours)
  if ('missing' in found) return { outside: false, message: MISSING[found.missing] }
  const beyond = found.readings.find(({ series, at }) => open.get(series)?.has(at))
  if (beyond)
    return {
      outside: true,
      measured: readingMeasured(beyond, held.window),
      message: `${inWords(beyond, held.window)} lay outside and went unanswered`,
    }
  const doubts = found.readings.map((reading) => doubtOf(reading, held))
  // One reading that can be believed is enough; of several doubtful ones the first is told.
  return doubts.includes(undefined) ? undefined : { outside: false, message: doubts[0]! }
}

const readingMeasured = ({ series, at }: ReadingOfRun, { unit }: ProcessWindow): Measured => ({
  reading: measure(series.values[at]!, unit),
  log: series.log.code,
  on: dayOf(series.log, series.instants[at]!),
})

const inWords = ({ series, at }: ReadingOfRun, { unit }: ProcessWindow): string =>
  `${formatQuantity(series.values[at]!, unit)} of log ${series.log.code} on ${dayOf(series.log, series.instants[at]!)}`

/** Why a reading inside proves nothing; undefined when it may be believed. */
function doubtOf(reading: ReadingOfRun, { window, instruments }: Held): string | undefined {
  const { series, at } = reading
  const doubt = instrumentDoubt(series, at, window, instruments)
  return doubt && `${inWords(reading, window)} proves nothing: ${doubt}`
}

/**
 * Why the instrument of a reading lets it prove nothing: not in calibration
 * then, or not named although the reading lies within the guard band, where
 * only a known instrument can tell inside from outside.
 */
export function instrumentDoubt(
  { log, instants, values }: LogSeries,
  at: number,
  window: ProcessWindow,
  file: InstrumentFile,
): string | undefined {
  if (log.instrumentId === null)
    return marginIn(window, values[at]!).verdict === 'marginal'
      ? 'so near to a limit the instrument must be named'
      : undefined
  const status = calibrationStatus(log.instrumentId, dayOf(log, instants[at]!), file)
  return status.stands ? undefined : status.message
}

/** By series, the places of readings in excursions that nobody has answered. */
type OpenExcursions = ReadonlyMap<LogSeries, ReadonlySet<number>>

function openExcursionsOf(logs: readonly LogSeries[], { window, answers }: Held): OpenExcursions {
  return new Map(
    logs.map((series) => {
      const places = new Set<number>()
      for (const { first, last } of excursionsFrom(series.values, window)) {
        const instant = series.instants[first]!
        if (answerTo(answers, { log: series.log.code, chartRule: OUTSIDE_WINDOW, instant })) continue
        for (let at = first; at <= last; at++) places.add(at)
      }
      return [series, places]
    }),
  )
}

/** The days of runs, each with its line, once and in order. */
export const runsMeasured = (runs: readonly SolderingRun[]): string[] =>
  [...new Set(runs.map(({ doneOn, line }) => (line === undefined ? doneOn : `${doneOn} (${line})`)))].sort()

/** "2026-12-01–2026-12-04, 2026-12-07 (Line 1)": every day, days on end as a range. */
export const runsInWords = (runs: readonly SolderingRun[]): string => foldedList(runsMeasured(runs))
