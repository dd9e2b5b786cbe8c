import { LogOverTime } from '@/app/drawing/log-over-time'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'
import { chartLog, FEWEST_TO_CHART } from '@/shared/rules/control/log-signals'

/** A log over time, with control limits estimated from its own readings. */
export function LogChart({ log, characteristic }: { log: Log; characteristic: Characteristic }) {
  const column = characteristic.columns[characteristic.charted]
  const { readings, chart } = chartLog(log, characteristic)
  if (readings.length === 0 || column?.kind !== 'number')
    return <Empty title="No readings yet">Type one in, or import a CSV file, below.</Empty>
  const signals = (chart?.signals ?? []).flatMap((signal) => {
    const reading = readings[signal.soundedAt]
    return reading ? [{ at: reading.at, value: reading.value, rule: signal.ruleId, says: signal.ruleId }] : []
  })
  return (
    <Section
      heading="Chart"
      lead={
        chart
          ? 'Individuals chart; centre and control limits estimated from these readings and their moving range, signals by the zone rules of the Western Electric handbook (1956).'
          : `Control limits are drawn from ${FEWEST_TO_CHART} readings on.`
      }
    >
      <LogOverTime
        title={`${log.code} over time`}
        characteristic={column.label}
        unit={column.unit}
        readings={readings}
        {...(chart
          ? { centre: chart.centre[0], control: { lower: chart.lower[0], upper: chart.upper[0] }, signals }
          : {})}
      />
    </Section>
  )
}
