import { Section } from '@/app/ui/section'
import { ValueTable } from '@/app/ui/parameter-value'
import { works } from '@/lib/settings/works'
import { textColumn } from '@/shared/columns/column'
import { wallTimeOf } from '@/shared/quantity/works-clock'
import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'

const SHOWN = 25

/** The last readings of a log, the newest first. */
export function NewestReadings({ log, characteristic }: { log: Log; characteristic: Characteristic }) {
  const { count, columns } = log.readings
  if (count === 0) return null
  const shown = Math.min(SHOWN, count)
  const close = hasSeconds(log)
  const rows = Array.from({ length: shown }, (_, back) => count - 1 - back).map((index) => ({
    at: readAt(Number(columns['at']?.[index]), close),
    ...Object.fromEntries(
      Object.keys(characteristic.columns).map((name) => [name, columns[name]?.[index] ?? undefined]),
    ),
  }))
  return (
    <Section heading="Newest readings" lead={`${shown} of ${count}`}>
      <ValueTable
        caption="Readings, newest first"
        columns={{ at: textColumn({ label: `Time, ${works().timeZone}` }), ...characteristic.columns }}
        rows={rows}
      />
    </Section>
  )
}

/** By the works' clock, to the minute or to the tenth of a second. */
function readAt(instant: number, close: boolean): string {
  const time = wallTimeOf(instant, works().timeZone).replace('T', ' ')
  return close ? `${time}.${Math.floor((instant % 1000) / 100)}` : time.slice(0, 16)
}

/** Readings that follow within the minute are told to the tenth of a second. */
const hasSeconds = ({ readings: { count, columns } }: Log): boolean => {
  const [last, before] = [columns['at']?.[count - 1], columns['at']?.[count - 2]]
  return Number(last) - Number(before) < 60_000
}
