import type { ReactNode } from 'react'
import { EveryNumberOverTime } from '@/app/drawing/every-number-over-time'
import { Section } from '@/app/ui/section'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Characteristic } from '@/shared/records/characteristic'
import type { CharacteristicKey } from '@/shared/records/characteristics'
import { isLevel, type LevelCharacteristic } from '@/shared/logs/level-characteristics'
import type { Log } from '@/shared/records/log'
import { BathTrend } from './bath-trend'
import { Capability } from './capability'
import type { ChartAsked } from './chart-asked'
import { IronChecks } from './iron-checks'
import { LogChart } from './log-chart'
import { ThermalProfile } from './thermal-profile'
import { NothingRead } from './nothing-read'

interface LogPictureProps {
  view: ProgrammeView
  log: Log
  characteristic: Characteristic
  asked: ChartAsked & { metal?: string }
}

/** A log drawn as its kind needs it: a chart of what stays level, a trend of a bath, a profile, the checks of irons. */
export function LogPicture(props: LogPictureProps) {
  const { view, log, characteristic, asked } = props
  if (isLevel(characteristic.key))
    return (
      <>
        <LogChart view={view} log={log} asked={asked} />
        <Capability view={view} log={log} />
      </>
    )
  return WITHOUT_LEVEL[characteristic.key as keyof typeof WITHOUT_LEVEL](props)
}

const WITHOUT_LEVEL: Readonly<
  Record<Exclude<CharacteristicKey, LevelCharacteristic>, (props: LogPictureProps) => ReactNode>
> = {
  'thermal-profile': ({ view, log }) => <ThermalProfile log={log} facts={view.state.facts} />,
  'bath-composition': ({ view, log, asked }) => (
    <BathTrend code={view.code} log={log} facts={view.state.facts} metal={asked.metal} />
  ),
  'tip-temperature': ({ view, log }) => <IronChecks log={log} facts={view.state.facts} />,
  'tip-ground': ({ view, log }) => <IronChecks log={log} facts={view.state.facts} />,
  'store-climate': ({ log, characteristic }) => <OverTime log={log} characteristic={characteristic} />,
}

/** What has no level to hold: every number column against time, without control limits. */
function OverTime({ log, characteristic }: { log: Log; characteristic: Characteristic }) {
  if (log.readings.count === 0) return <NothingRead log={log} title="No readings yet" />
  return (
    <Section id="chart" heading="Over time" lead="It moves with the season, so no control limits are drawn.">
      <EveryNumberOverTime log={log} characteristic={characteristic} />
    </Section>
  )
}
