import { Section } from '@/app/ui/section'
import { ValueTable } from '@/app/ui/parameter-value'
import { textColumn } from '@/shared/columns/column'
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
    at: new Date(Number(columns['at']?.[index]))
      .toISOString()
      .slice(0, close ? 21 : 16)
      .replace('T', ' '),
    ...Object.fromEntries(
      Object.keys(characteristic.columns).map((name) => [name, columns[name]?.[index] ?? undefined]),
    ),
  }))
  return (
    <Section heading="Newest readings" lead={`${shown} of ${count}`}>
      <ValueTable
        caption="Readings, newest first"
        columns={{ at: textColumn({ label: 'Time, UTC' }), ...characteristic.columns }}
        rows={rows}
      />
    </Section>
  )
}

/** Readings that follow within the minute are told to the tenth of a second. */
const hasSeconds = ({ readings: { count, columns } }: Log): boolean => {
  const [last, before] = [columns['at']?.[count - 1], columns['at']?.[count - 2]]
  return Number(last) - Number(before) < 60_000
}
