import type { RecordOf } from '@/shared/records/record-kinds'

type Reading = Pick<RecordOf<'insulation-resistance'>, 'hours' | 'everyMin'>

/** Readings are taken a little late now and then. */
const LATE = 1.05

/**
 * The first stretch of a test, in hours from its start, in which a pattern was
 * read less often than asked; undefined where there is none. A row that says how
 * often an instrument read since the row before stands for all of these readings.
 */
export function gapInReadings(
  rows: readonly Reading[],
  maxHoursBetween: number,
): { readonly from: number; readonly to: number } | undefined {
  let from = 0
  for (const { hours: to, everyMin } of rows.toSorted((a, b) => a.hours - b.hours)) {
    const between = everyMin === undefined ? to - from : Math.min(to - from, everyMin / 60)
    if (between > maxHoursBetween * LATE) return { from, to }
    from = to
  }
  return undefined
}
