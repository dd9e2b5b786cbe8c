import type { Ruling } from '@/shared/plan/requirement'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import { binaryDust } from '@/shared/quantity/binary-dust'
import { dateOf } from '@/shared/quantity/calendar'
import type { Unit } from '@/shared/quantity/unit'
import { calibrationStanding, type InstrumentFile } from '@/shared/instruments/calibration-status'
import type { LogSeries } from './log-series'
import { answerTo, OUTSIDE_WINDOW, type SignalAnswer } from './signal-answers'
import { namedRuling } from '@/shared/rules/ruling-source'
import {
  verdictOn,
  worstVerdict,
  type Judged,
  type Margin,
  type Part,
  type Verdict,
} from '@/shared/rules/finding'

/** One side of a process window and the document that sets it. */
export interface Bound {
  readonly value: number
  readonly document: string
}
export interface ProcessWindow {
  readonly least?: Bound
  readonly most?: Bound
  readonly unit: Unit
}

export const boundBy = (ruling: Ruling): Bound => ({ value: ruling.value, document: namedRuling(ruling) })

/** A window of so much to either side of a target. Binary dust is taken off, so that a typed limit counts as itself. */
export const windowAround = (
  target: number,
  tolerance: number,
  unit: Unit,
  document: string,
): ProcessWindow => ({
  least: { value: Number((target - tolerance).toPrecision(12)), document },
  most: { value: Number((target + tolerance).toPrecision(12)), document },
  unit,
})

/** The part common to two windows in the same unit: the higher of the lower bounds, the lower of the upper. */
export const bothWindows = (one: ProcessWindow, other: ProcessWindow): ProcessWindow => ({
  least: tighter(one.least, other.least, (a, b) => a > b),
  most: tighter(one.most, other.most, (a, b) => a < b),
  unit: one.unit,
})
const tighter = (
  one: Bound | undefined,
  other: Bound | undefined,
  isTighter: (a: number, b: number) => boolean,
): Bound | undefined => {
  if (!one || !other) return one ?? other
  return isTighter(other.value, one.value) ? other : one
}

/** Inside by less than this is marginal: a tenth of the window's width, or of its one limit. */
export function guardBandOf({ least, most }: ProcessWindow): number {
  if (least && most) return Math.abs(most.value - least.value) / 10
  return Math.abs((least ?? most)?.value ?? 0) / 10
}

/** Stretches of consecutive readings outside the window: index of the first and of the last of each. */
export function excursionsFrom(
  values: readonly number[],
  { least, most }: ProcessWindow,
): { first: number; last: number }[] {
  const low = least?.value ?? -Infinity
  const high = most?.value ?? Infinity
  const slackLow = binaryDust(low, low)
  const slackHigh = binaryDust(high, high)
  const found: { first: number; last: number }[] = []
  for (let index = 0; index < values.length; index++) {
    const value = values[index]!
    if (value >= low - slackLow && value <= high + slackHigh) continue
    const open = found[found.length - 1]
    if (open && open.last === index - 1) open.last = index
    else found.push({ first: index, last: index })
  }
  return found
}

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
}

/**
 * Judges logs against a process window: the newest reading of each log must lie
 * inside, read by an instrument in calibration, and every earlier excursion must
 * have been answered. Limits that cross leave nothing inside and fail.
 */
export function judgeLoggedWindow(question: Question): Omit<Judged, 'working' | 'sources'> {
  const { what, series, window, recordIn } = question
  const limit = windowInWords(window)
  const filled = series.filter(({ values }) => values.length > 0)
  if (filled.length === 0)
    return {
      verdict: 'undetermined',
      found: `${what}: no reading is recorded yet. Record one in ${recordIn}.`,
      limit,
      missing: [recordIn],
    }
  const parts = filled.map((one) => judgeSeries(one, question))
  const verdict = worstVerdict(parts.map((part) => part.verdict))
  const worst = parts.find((part) => part.verdict === verdict) ?? parts[0]!
  const unnamed = filled.filter(({ log }) => log.instrumentId === null).map(({ log }) => log.code)
  return {
    verdict,
    found: `${what}: ${worst.found}`,
    limit,
    margin: worst.margin,
    parts,
    remedy: worst.remedy,
    missing:
      verdict === 'undetermined'
        ? [`a reading by an instrument in calibration (${worst.subject})`]
        : undefined,
    notes:
      unnamed.length > 0
        ? [`No instrument is named for ${unnamed.join(', ')}: calibration was not checked.`]
        : undefined,
  }
}

/** "240 °C (DOC A) to 260 °C (DOC B)". */
export function windowInWords({ least, most, unit }: ProcessWindow): string {
  const worded = ({ value, document }: Bound): string => `${formatQuantity(value, unit)} (${document})`
  if (least && most) return `At least ${worded(least)} and at most ${worded(most)}.`
  if (least) return `At least ${worded(least)}.`
  return most ? `At most ${worded(most)}.` : 'No limit is set.'
}

/** The margin to whichever limit lies nearer, and the verdict against both. */
export function marginIn(
  window: ProcessWindow,
  found: number,
): { verdict: Verdict; margin: Margin | undefined } {
  const guardBand = guardBandOf(window)
  const { least, most, unit } = window
  const margins: Margin[] = []
  if (least) margins.push({ found, limit: least.value, unit, direction: 'at least', guardBand })
  if (most) margins.push({ found, limit: most.value, unit, direction: 'at most', guardBand })
  const room = (margin: Margin): number =>
    margin.direction === 'at most' ? margin.limit - margin.found : margin.found - margin.limit
  const nearest = margins.reduce<Margin | undefined>(
    (near, next) => (near === undefined || room(next) < room(near) ? next : near),
    undefined,
  )
  return { verdict: worstVerdict(margins.map(verdictOn)), margin: nearest }
}

/**
 * One series against its window: the newest value, the excursions before it, and
 * the instrument that read the newest. What fails stays failing whoever reads next.
 */
export function judgeSeries(
  series: LogSeries,
  { window, answers, instruments, mend }: Pick<Question, 'window' | 'answers' | 'instruments' | 'mend'>,
  subject = `Log ${series.log.code}`,
): Part {
  const { log, instants, values } = series
  const last = values.length - 1
  const newest = values[last]!
  const on = dateOf(instants[last]!)
  const { verdict, margin } = marginIn(window, newest)
  const printed = margin
    ? formatAgainst(newest, margin.limit, window.unit).found
    : formatQuantity(newest, window.unit)
  const reading = `${printed} on ${on} (log ${log.code})`

  if (verdict === 'fails')
    return {
      subject,
      verdict,
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
      subject,
      verdict: 'fails',
      found: `${reading} lies inside, but ${counted(open.length, 'earlier excursion')} from ${since.slice(0, 10)} on went unanswered.`,
      margin,
      remedy: {
        says: `Answer the excursion of ${since} in log ${log.code} (chart rule "${OUTSIDE_WINDOW}"): what caused it, and what became of the boards soldered then.`,
      },
    }
  }
  const standing =
    log.instrumentId === null ? undefined : calibrationStanding(log.instrumentId, on, instruments)
  if (standing && !standing.stands)
    return {
      subject,
      verdict: 'undetermined',
      found: `${reading} proves nothing: ${standing.says}.`,
      margin,
      remedy: { says: 'Read it again with an instrument in calibration.' },
    }
  return {
    subject,
    verdict,
    found: `${reading} lies inside${verdict === 'marginal' ? ', close to a limit' : ''}.`,
    margin,
  }
}

const remedyFrom = (says: string | undefined): Part['remedy'] => (says === undefined ? undefined : { says })

const counted = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`
