import { LogOverTime } from '@/app/drawing/log-over-time'
import { Empty } from '@/app/ui/empty'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Characteristic } from '@/shared/records/characteristic'
import { bathComposition } from '@/shared/records/characteristics/bath-composition'
import { thermalProfile } from '@/shared/records/characteristics/thermal-profile'
import { tipGround } from '@/shared/records/characteristics/tip-ground'
import { tipTemperature } from '@/shared/records/characteristics/tip-temperature'
import { isLevel } from '@/shared/logs/level-characteristics'
import type { Log } from '@/shared/records/log'
import { columnSeries } from '@/shared/logs/log-series'
import { BathTrend } from './bath-trend'
import { Capability } from './capability'
import type { ChartAsked } from './chart-asked'
import { IronChecks } from './iron-checks'
import { LogChart } from './log-chart'
import { ThermalProfile } from './thermal-profile'

interface LogPictureProps {
  view: ProgrammeView
  log: Log
  characteristic: Characteristic
  asked: ChartAsked & { metal?: string }
}

/** A log drawn as its kind needs it: a chart of what stays level, a trend of a bath, a profile, the checks of irons. */
export function LogPicture({ view, log, characteristic, asked }: LogPictureProps) {
  const { facts } = view.state
  if (isLevel(log.characteristic))
    return (
      <>
        <LogChart view={view} log={log} asked={asked} />
        <Capability view={view} log={log} />
      </>
    )
  switch (log.characteristic) {
    case thermalProfile.key:
      return <ThermalProfile log={log} facts={facts} />
    case bathComposition.key:
      return <BathTrend code={view.code} log={log} facts={facts} metal={asked.metal} />
    case tipTemperature.key:
    case tipGround.key:
      return <IronChecks log={log} facts={facts} />
    default:
      return <OverTime log={log} characteristic={characteristic} />
  }
}

/** What has no level to hold: every number column against time, without control limits. */
function OverTime({ log, characteristic }: { log: Log; characteristic: Characteristic }) {
  if (log.readings.count === 0)
    return <Empty title="No readings yet">Type one in, or import a CSV file, below.</Empty>
  return (
    <Section id="chart" heading="Over time" lead="It moves with the season, so no control limits are drawn.">
      {Object.entries(characteristic.columns).map(([name, column]) => {
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
      })}
    </Section>
  )
}
