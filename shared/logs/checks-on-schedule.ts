import { calibrationStatus, type InstrumentFile } from '@/shared/instruments/calibration-status'
import { addDays, daysBetween } from '@/shared/quantity/calendar'
import { formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import { undetermined, type Judged, type Part, type About } from '@/shared/rules/finding'
import { spokenByWorst } from '@/shared/rules/worst-part'
import { count } from '@/shared/rules/measure'
import { dayOf } from './log-day'

/** A day of work and the newest check on or before it. */
interface Coverage {
  readonly day: string
  readonly checkedOn: string | undefined
}

/** One thing that is checked: the days of its checks, ascending, and the span in which it was in use. */
export interface Checked {
  readonly subject: string
  readonly about: About
  readonly checks: readonly string[]
  /** In use from here on; from the first day of work when it is not said. */
  readonly from?: string
  /** Out of use after this day. */
  readonly until?: string
}

/**
 * The days, ascending, on which rows of a log were read by an instrument in
 * calibration then: any other check is none. A log that names no instrument is
 * taken at its word, as a laboratory's report is.
 */
export const daysChecked = (
  log: Pick<Log, 'instrumentId' | 'timeZone'>,
  instants: readonly number[],
  file: InstrumentFile,
): string[] =>
  instants
    .map((at) => dayOf(log, at))
    .filter((day) => log.instrumentId === null || calibrationStatus(log.instrumentId, day, file).stands)

/** For each day of work, the newest check on or before it. Both lists ascending; linear. */
function coverageOf(days: readonly string[], checks: readonly string[]): Coverage[] {
  let next = 0
  let checkedOn: string | undefined
  return days.map((day) => {
    while (next < checks.length && checks[next]! <= day) checkedOn = checks[next++]
    return { day, checkedOn }
  })
}

/**
 * Whether every day of work was covered by a check no older than the interval.
 * It asks what was true then; it does not change as days pass without work.
 */
export function judgeSchedule(question: {
  /** "Bath analysis" */
  readonly check: string
  readonly subjects: readonly Checked[]
  /** Days on which work was done, ascending. */
  readonly days: readonly string[]
  readonly maxDays: number
  readonly document: string
  readonly work: string
}): Omit<Judged, 'sources'> {
  const { check, subjects, days, maxDays, document, work } = question
  const limit = `${check} no more than ${formatQuantity(maxDays, 'days')} before the work (${document}).`
  if (days.length === 0)
    return undetermined(
      `No ${work} is recorded yet: there is no day to hold the checks against.`,
      [work],
      limit,
    )
  if (subjects.length === 0)
    return {
      verdict: 'fails',
      measured: { checks: count(0), workSince: days[0]! },
      found: `${check}: none is recorded, yet ${work} was done from ${days[0]} on.`,
      limit,
      working: [],
      remedy: { message: `Do it now, record it, and answer for the work since ${days[0]}.` },
    }
  const parts = subjects.map((one) => partOf(one, days, maxDays))
  const spoken = spokenByWorst(parts)
  return {
    ...spoken,
    found: `${check}, ${spoken.found}`,
    limit,
    working: [{ label: 'Days of work held against checks', result: formatQuantity(days.length, 'days') }],
  }
}

function partOf(
  { subject, about, checks, from = '', until = '9999-12-31' }: Checked,
  days: readonly string[],
  maxDays: number,
): Part {
  const inUse = days.filter((day) => from <= day && day <= until)
  if (inUse.length === 0)
    return {
      subject,
      about,
      verdict: 'not applicable',
      found: 'no work was done with it since its first check.',
    }
  const coverage = coverageOf(inUse, checks)
  const uncovered = coverage.filter(
    ({ checkedOn, day }) => !(checkedOn !== undefined && daysBetween(checkedOn, day) <= maxDays),
  )
  const first = uncovered[0]
  if (first) {
    const age = first.checkedOn === undefined ? undefined : daysBetween(first.checkedOn, first.day)
    return {
      subject,
      about,
      verdict: 'fails',
      measured: { firstUncovered: first.day, uncovered: count(uncovered.length, 'days') },
      found:
        age === undefined
          ? `work was done on ${first.day} before any check.`
          : `work was done on ${first.day}, ${age} days after the newest check (${uncovered.length} such days in all).`,
      margin:
        age === undefined
          ? undefined
          : { found: age, limit: maxDays, unit: 'days', direction: 'at most', guardBand: 0 },
      remedy: {
        message: `A check by ${addDays(first.checkedOn ?? first.day, first.checkedOn ? maxDays : 0)} would have covered it. Check now, and let quality decide what that work is worth.`,
      },
    }
  }
  const newest = coverage[coverage.length - 1]!
  const oldest = Math.max(...coverage.map(({ checkedOn, day }) => daysBetween(checkedOn!, day)))
  return {
    subject,
    about,
    verdict: 'meets',
    measured: { newestCheck: newest.checkedOn ?? '' },
    found: `every day of work was covered; the newest check is of ${newest.checkedOn}, the oldest in use was ${oldest} days old.`,
    margin: { found: oldest, limit: maxDays, unit: 'days', direction: 'at most', guardBand: 0 },
  }
}
