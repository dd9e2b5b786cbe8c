import type { Instrument } from '@/shared/records/instrument'

/** Shown as due soon for so many days before. */
const SOON_DAYS = 30
const DAY_MS = 86_400_000

/** How an instrument's calibration stands on a day, 'YYYY-MM-DD'. */
export function dueStanding(
  { dueOn, outOfUse }: Pick<Instrument, 'dueOn' | 'outOfUse'>,
  today: string,
): 'out of use' | 'overdue' | 'due soon' | 'in date' {
  if (outOfUse) return 'out of use'
  if (dueOn < today) return 'overdue'
  return Date.parse(dueOn) - Date.parse(today) <= SOON_DAYS * DAY_MS ? 'due soon' : 'in date'
}
