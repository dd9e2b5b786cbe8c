import { memoByText } from '@/shared/memo'
import { wallTimeOf } from './works-clock'

/** Made once for a zone: making one costs more than what it formats. */
const zoneNames = memoByText(
  4,
  (timeZone: string) => timeZone,
  (timeZone: string) => new Intl.DateTimeFormat('en-GB', { timeZone, timeZoneName: 'short' }),
)

/** An instant by the clock of a works, to the minute, with the clock's name: "2026-03-12 14:05 CET" (ISO 8601). */
export const momentInWords = (instant: number, timeZone: string): string =>
  `${wallTimeOf(instant, timeZone).slice(0, 16).replace('T', ' ')} ${zoneName(instant, timeZone)}`

const zoneName = (instant: number, timeZone: string): string =>
  zoneNames(timeZone)
    .formatToParts(instant)
    .find(({ type }) => type === 'timeZoneName')?.value ?? timeZone
