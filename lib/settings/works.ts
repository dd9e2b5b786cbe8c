import { settings } from '@/lib/settings/settings'
import type { Works } from '@/shared/quantity/works'
import { dateInZone } from '@/shared/quantity/works-clock'

/** How time, numbers, dates and money are told at the works of this installation. */
export function works(): Works {
  const { timeZone, notation, currency } = settings()
  return { timeZone, notation, currency }
}

/** The date at the works, 'YYYY-MM-DD': what "today" means to every rule and command. */
export const dateAtWorks = (at: Date | number): string => dateInZone(at, settings().timeZone)
