import { MS_PER_DAY } from '@/shared/quantity/calendar'

/** A moment read from RFC 3339 text. */
export type Rfc3339Instant = {
  /** Milliseconds since 1970-01-01T00:00:00Z, finer digits cut off. A leap second counts as the millisecond before it ends. */
  readonly epochMs: number
  /** The fraction of the second in nanoseconds, finer digits cut off. */
  readonly nanoseconds: number
  /** How far local time is ahead of UTC, in minutes; undefined for `-00:00`, which says that nobody knows. */
  readonly offsetMinutes: number | undefined
  readonly isLeapSecond: boolean
}

const UTC_MILLISECONDS = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/
/** The calendar repeats every 400 years, by so many days. */
const MS_PER_400_YEARS = 146_097 * MS_PER_DAY

/**
 * Milliseconds since 1970 of a calendar date and time in UTC; undefined when there is no such
 * date or time of day. Second 60 is not taken.
 */
export function utcEpochMs(
  year: number,
  month: number,
  day: number,
  hour: number,
  minute: number,
  second: number,
): number | undefined {
  const exists = day >= 1 && month >= 1 && month <= 12 && hour <= 23 && minute <= 59 && second <= 59
  if (!exists || !(year >= 0)) return undefined
  // Counted 400 years later, because the platform takes the years 0 to 99 for those of the last century.
  const later = Date.UTC(year + 400, month - 1, day, hour, minute, second)
  // A day that the month lacks has rolled over into the next.
  if (day > 28 && new Date(later).getUTCDate() !== day) return undefined
  return later - MS_PER_400_YEARS
}

/**
 * Reads a date and time strictly by RFC 3339 section 5.6: undefined for text that is no
 * `date-time`, for a day that the month lacks, for hour 24 and for a leap second anywhere but
 * at the end of a UTC month (section 5.7). Lower-case t and z are allowed; a space for the T is not.
 * (The language's own date parser accepts 31 April and refuses leap seconds.)
 */
export function readRfc3339(text: string): Rfc3339Instant | undefined {
  if (!hasDateTimeMarks(text)) return undefined
  const [fraction, zoneAt] = readFraction(text)
  const offset = readOffsetMinutes(text, zoneAt)
  const second = twoDigits(text, 17)
  const isLeapSecond = second === 60
  const localMs = utcEpochMs(
    twoDigits(text, 0) * 100 + twoDigits(text, 2),
    twoDigits(text, 5),
    twoDigits(text, 8),
    twoDigits(text, 11),
    twoDigits(text, 14),
    isLeapSecond ? 59 : second,
  )
  if (fraction === undefined || offset === undefined || localMs === undefined) return undefined

  const startOfSecondMs = localMs - offset * 60_000
  if (isLeapSecond && !endsUtcMonth(startOfSecondMs)) return undefined
  return {
    epochMs: startOfSecondMs + (isLeapSecond ? 999 : Math.floor(fraction / 1_000_000)),
    nanoseconds: fraction,
    offsetMinutes: offset === 0 && text.charAt(zoneAt) === '-' ? undefined : offset,
    isLeapSecond,
  }
}

/** The characters between the numbers, in `2026-03-04T10:11:12`. */
const hasDateTimeMarks = (text: string): boolean =>
  text.charCodeAt(4) === 0x2d &&
  text.charCodeAt(7) === 0x2d &&
  (text.charCodeAt(10) | 0x20) === 0x74 &&
  text.charCodeAt(13) === 0x3a &&
  text.charCodeAt(16) === 0x3a

/** The fraction behind the seconds in nanoseconds, undefined when its digits are missing, and where the zone begins. */
function readFraction(text: string): [nanoseconds: number | undefined, zoneAt: number] {
  if (text.charCodeAt(19) !== 0x2e) return [0, 19]
  let at = 20
  let nanoseconds = 0
  let unit = 100_000_000
  for (; isDigit(text.charCodeAt(at)); at++) {
    nanoseconds += Math.floor((text.charCodeAt(at) - 0x30) * unit)
    unit /= 10
  }
  return [at === 20 ? undefined : nanoseconds, at]
}

/** Minutes ahead of UTC from `Z`, `+hh:mm` or `-hh:mm`, which must end the text; undefined for anything else. */
function readOffsetMinutes(text: string, zoneAt: number): number | undefined {
  const zone = text.charCodeAt(zoneAt)
  if ((zone | 0x20) === 0x7a) return text.length === zoneAt + 1 ? 0 : undefined
  if ((zone !== 0x2b && zone !== 0x2d) || text.length !== zoneAt + 6) return undefined
  const hours = twoDigits(text, zoneAt + 1)
  const minutes = twoDigits(text, zoneAt + 4)
  if (!(hours <= 23 && minutes <= 59) || text.charCodeAt(zoneAt + 3) !== 0x3a) return undefined
  return zone === 0x2d ? -(hours * 60 + minutes) : hours * 60 + minutes
}

const isDigit = (code: number): boolean => code >= 0x30 && code <= 0x39

/** The number that two digits write; NaN when they are none. */
function twoDigits(text: string, at: number): number {
  const tens = text.charCodeAt(at)
  const ones = text.charCodeAt(at + 1)
  return isDigit(tens) && isDigit(ones) ? tens * 10 + ones - 528 : Number.NaN
}

/** The same, refusing with a RangeError that says what was expected. */
export function parseRfc3339(text: string): Rfc3339Instant {
  const instant = readRfc3339(text)
  if (!instant) {
    throw new RangeError(
      `"${text}" is not an RFC 3339 date and time, such as 2026-03-04T10:11:12Z or 2026-03-04T11:11:12+01:00.`,
    )
  }
  return instant
}

/** True for the one form in which the trail keeps time: `2026-03-04T10:11:12.345Z`, and a time that exists. */
export const isUtcMillisecondInstant = (text: string): boolean =>
  UTC_MILLISECONDS.test(text) &&
  utcEpochMs(
    twoDigits(text, 0) * 100 + twoDigits(text, 2),
    twoDigits(text, 5),
    twoDigits(text, 8),
    twoDigits(text, 11),
    twoDigits(text, 14),
    twoDigits(text, 17),
  ) !== undefined

/** Whether the second that starts here is 23:59:59 on the last day of a UTC month. */
const endsUtcMonth = (startOfSecondMs: number): boolean =>
  (startOfSecondMs + 1000) % MS_PER_DAY === 0 && new Date(startOfSecondMs + 1000).getUTCDate() === 1
