import { works } from '@/lib/settings/works'
import { formatQuantity } from '@/shared/quantity/format'
import type { Unit } from '@/shared/quantity/unit'
import { Moment } from '@/app/ui/date'
import { ControlPlot } from './control-plot'
import { extentOf } from './extent'
import type { Numbers } from './numbers-table'
import type { RunMark } from './run-marks'

/** A reading of a log; `at` in milliseconds since 1970, UTC. */
export type Reading = { at: number; value: number }

type LogOverTimeProps = {
  title: string
  characteristic: string
  unit: Unit
  /** In order of time; any number. */
  readings: readonly Reading[]
  specification?: { atLeast?: number; atMost?: number }
  runs?: readonly RunMark[]
}

/** A log against time with the limits of the specification, toothed on the side that is not allowed. */
export function LogOverTime(props: LogOverTimeProps) {
  const { title, characteristic, unit, readings, specification, runs } = props
  return (
    <ControlPlot
      title={title}
      description={`${readings.length} readings of ${characteristic.toLowerCase()} over time.`}
      up={{ label: characteristic, unit }}
      across={{
        kind: 'time',
        title: `Date and time, ${works().timeZone}`,
        places: readings.map(({ at }) => at),
      }}
      lines={[readings.map(({ value }) => value)]}
      specification={specification}
      runs={runs}
      numbers={numbersOf(props)}
    />
  )
}

function numbersOf({ readings, unit, specification = {} }: LogOverTimeProps): Numbers {
  const [first, last] = [readings[0], readings[readings.length - 1]]
  const [min, max] = extentOf([readings.map(({ value }) => value)])
  const said = (value: number) => formatQuantity(value, unit)
  const { atLeast, atMost } = specification
  return {
    columns: [{ label: 'What' }, { label: 'Value' }, { label: 'When', set: 'text' }],
    rows: [
      ['Readings', String(readings.length), first && <Moment key="from" at={new Date(first.at)} />],
      ...(last
        ? [
            ['Last reading', said(last.value), <Moment key="to" at={new Date(last.at)} />],
            ['Lowest', said(min), ''],
            ['Highest', said(max), ''],
          ]
        : []),
      ...(atMost === undefined ? [] : [['at most', said(atMost), '']]),
      ...(atLeast === undefined ? [] : [['at least', said(atLeast), '']]),
    ],
  }
}
