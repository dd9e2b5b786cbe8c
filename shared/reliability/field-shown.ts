import { daysBetween, monthsBetween } from '@/shared/quantity/calendar'
import type { RecordOf } from '@/shared/records/record-kinds'
import { exactRateLowerBound, exactRateUpperBound } from '@/shared/statistics/intervals/exact-poisson-rate'
import { testLengthFactor } from '@/shared/reliability/demonstration/demonstration'
import { growthShown } from './growth-shown'
import type { ProgrammeTarget } from './programme-target'

export type FieldReturn = RecordOf<'field-return'>
export type FieldExposure = RecordOf<'field-exposure'>

/** What service has shown by a day. Rates in FIT a board. */
export interface FieldPoint {
  readonly on: string
  readonly boardHours: number
  /** Boards back with a failed solder joint by then. */
  readonly failed: number
  readonly rate: number
  /** One-sided each, with the confidence asked for. */
  readonly lower: number
  readonly upper: number
}

/**
 * The record of service at the end of each period of exposure. The last point
 * counts every return, also one after the last period: so it agrees with the
 * finding on field returns. Empty without exposure.
 * Source: Garwood, Biometrika 28 (1936): exact bounds of a rate.
 */
export function fieldTimeline(
  returns: readonly FieldReturn[],
  exposures: readonly FieldExposure[],
  { confidence }: Pick<ProgrammeTarget, 'confidence'>,
): FieldPoint[] {
  const failures = returns.filter(({ cause }) => cause === 'solder-joint')
  const ends = [...new Set(exposures.map(({ to }) => to))].sort()
  return ends
    .map((on, position): FieldPoint => {
      const boardHours = exposures
        .filter(({ to }) => to <= on)
        .reduce((sum, { boards, hoursEach }) => sum + boards * hoursEach, 0)
      const isLast = position === ends.length - 1
      const failed = failures.filter(({ returnedOn }) => isLast || returnedOn <= on).length
      const seen = { events: failed, exposure: boardHours / 1e9 }
      return boardHours > 0
        ? {
            on,
            boardHours,
            failed,
            rate: seen.events / seen.exposure,
            lower: exactRateLowerBound(seen, confidence),
            upper: exactRateUpperBound(seen, confidence),
          }
        : { on, boardHours, failed, rate: 0, lower: 0, upper: Infinity }
    })
    .filter(({ boardHours }) => boardHours > 0)
}

/** Board-hours without a further failure that would show the budget; 0 when it is shown. */
export function boardHoursStillToServe(
  { boardHours, failed }: Pick<FieldPoint, 'boardHours' | 'failed'>,
  { boardFit, confidence }: Pick<ProgrammeTarget, 'boardFit' | 'confidence'>,
): number {
  const needed = (testLengthFactor({ confidence, failuresAllowed: failed }) / boardFit) * 1e9
  return Math.max(0, needed - boardHours)
}

export type ReturnCause = FieldReturn['cause']

/** Longer gaps between two returns are left out, so that a date far off does not fill a page. */
const MAX_EMPTY_MONTHS = 24

/**
 * Returns by month and cause, months in order; a month without a return between
 * two with one is there too, unless more than two years lie between them.
 */
export function returnsByMonth(
  returns: readonly FieldReturn[],
): { readonly month: string; readonly counts: ReadonlyMap<ReturnCause, number>; readonly cost: number }[] {
  const byMonth = new Map<string, FieldReturn[]>()
  for (const row of returns.toSorted((a, b) => (a.returnedOn < b.returnedOn ? -1 : 1))) {
    const month = row.returnedOn.slice(0, 7)
    const known = byMonth.get(month)
    if (known) known.push(row)
    else byMonth.set(month, [row])
  }
  return monthsAlong([...byMonth.keys()]).map((month) => {
    const own = byMonth.get(month) ?? []
    const counts = new Map<ReturnCause, number>()
    for (const { cause } of own) counts.set(cause, (counts.get(cause) ?? 0) + 1)
    return { month, counts, cost: own.reduce((sum, { cost }) => sum + (cost ?? 0), 0) }
  })
}

/** These months with the empty ones between, where those are few. */
const monthsAlong = (months: readonly string[]): string[] =>
  months.flatMap((month, index) => {
    const before = months[index - 1]
    if (before === undefined) return [month]
    const apart =
      12 * (Number(month.slice(0, 4)) - Number(before.slice(0, 4))) +
      Number(month.slice(5)) -
      Number(before.slice(5))
    return apart - 1 > MAX_EMPTY_MONTHS ? [month] : monthsBetween(before, month).slice(1)
  })

/**
 * Growth of the boards in service: when boards with a failed joint came back, in
 * board-hours served until then. Within a period hours are taken to be served evenly.
 */
export function fieldGrowth(
  returns: readonly FieldReturn[],
  exposures: readonly FieldExposure[],
  confidence: number,
) {
  const servedBy = (day: string): number =>
    exposures.reduce(
      (sum, { from, to, boards, hoursEach }) => sum + boards * hoursEach * shareOf(from, to, day),
      0,
    )
  const end = exposures.reduce((sum, { boards, hoursEach }) => sum + boards * hoursEach, 0)
  const times = returns
    .filter(({ cause }) => cause === 'solder-joint')
    .map(({ returnedOn }) => servedBy(returnedOn))
    .filter((time) => time > 0)
    .sort((a, b) => a - b)
  return growthShown(times, end, confidence)
}

/** Share of a period, both days included, that is over at the end of a day. */
function shareOf(from: string, to: string, day: string): number {
  const days = daysBetween(from, to) + 1
  if (days <= 0) return day >= to ? 1 : 0
  return Math.min(1, Math.max(0, (daysBetween(from, day) + 1) / days))
}
