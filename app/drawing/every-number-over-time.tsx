import { LogOverTime } from '@/app/drawing/log-over-time'
import { columnSeries } from '@/shared/logs/log-series'
import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'

/** Every number that is read of a log, each against time, as it was read. */
export const EveryNumberOverTime = ({ log, characteristic }: { log: Log; characteristic: Characteristic }) =>
  Object.entries(characteristic.columns).map(([name, column]) => {
    if (column.kind !== 'number') return null
    const { instants, values } = columnSeries(log, name)
    return (
      <LogOverTime
        key={name}
        title={`${log.code}: ${column.label.toLowerCase()}`}
        characteristic={column.label}
        unit={column.unit}
        readings={values.map((value, index) => ({ at: instants[index]!, value }))}
      />
    )
  })
