import { LogOverTime } from '@/app/drawing/log-over-time'
import { formatQuantity } from '@/shared/quantity/format'
import type { Log } from '@/shared/records/log'
import type { Facts } from '@/shared/rules/facts'
import { limitedSeries } from '../excursions'

/** The density brought to one temperature, which is what the specification limits. */
export function CorrectedDensity({ log, facts }: { log: Log; facts: Facts }) {
  const limited = limitedSeries(log, facts)
  if (limited?.referenceC === undefined || limited.series.values.length === 0) return null
  const { series, window, referenceC } = limited
  const at = formatQuantity(referenceC, '°C')
  return (
    <LogOverTime
      title={`${log.code} brought to ${at}`}
      characteristic={`Density at ${at}`}
      unit="g/ml"
      readings={series.instants.map((instant, index) => ({ at: instant, value: series.values[index]! }))}
      specification={{
        ...(window?.least && { atLeast: window.least.value }),
        ...(window?.most && { atMost: window.most.value }),
      }}
    />
  )
}
