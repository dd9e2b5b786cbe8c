import { daysBetween } from '@/shared/quantity/calendar'
import type { Instrument } from '@/shared/records/instrument'

/** Shown as due soon for so many days before. */
const SOON_DAYS = 30

export type DueStatus = 'out of use' | 'overdue' | 'due soon' | 'current'

/** How an instrument's calibration stands on a day, 'YYYY-MM-DD'. */
export function dueStatus(
  { dueOn, outOfUse }: Pick<Instrument, 'dueOn' | 'outOfUse'>,
  today: string,
): DueStatus {
  if (outOfUse) return 'out of use'
  if (dueOn < today) return 'overdue'
  return daysBetween(today, dueOn) <= SOON_DAYS ? 'due soon' : 'current'
}
