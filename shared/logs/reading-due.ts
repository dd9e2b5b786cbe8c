import { MS_PER_HOUR } from '@/shared/quantity/calendar'

/** When the next reading of a log is due, and whether that is past; undefined where no interval is named. */
export interface ReadingDue {
  /** Epoch milliseconds; undefined where there is no reading to count from. */
  readonly at: number | undefined
  readonly isOverdue: boolean
}

/** Counted from the newest reading, in hours; a log with an interval and no reading is overdue. */
export function readingDue(
  newestAt: number | undefined,
  everyH: number | null,
  now: number,
): ReadingDue | undefined {
  if (everyH === null) return undefined
  if (newestAt === undefined) return { at: undefined, isOverdue: true }
  const at = newestAt + everyH * MS_PER_HOUR
  return { at, isOverdue: at < now }
}
