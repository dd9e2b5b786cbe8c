import { scaleLinear, scaleUtc } from 'd3-scale'
import { area } from 'd3-shape'
import { works } from '@/lib/settings/works'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { extentOf } from './extent'
import { frameOf } from './frame'
import { LevelMarks } from './level-marks'
import type { Numbers } from './numbers-table'
import { pointShape } from './point-shape'
import { axisTitle, numberTicks, timeTicks } from './ticks'

type Place = { at: number; value: number }

type TrendPlotProps = {
  title: string
  description: string
  up: { label: string; unit: Unit }
  readings: readonly Place[]
  /** Readings before the fit began, such as those before an exchange, are drawn but not fitted. */
  fittedFrom?: number
  /** The line, and where one more reading would lie, in order of time. */
  line?: readonly { at: number; value: number; lower: number; upper: number }[]
  atMost: number
  /** Dates to read off, such as that of a crossing. */
  uprights?: readonly { at: number; name: string }[]
  numbers: Numbers
}

const WIDTH = 900
const HEIGHT = 280

/** Readings over time with their fitted line, the band of its prediction, the limit it runs to, and when. */
export function TrendPlot(props: TrendPlotProps) {
  const {
    title,
    description,
    up,
    readings,
    line = [],
    atMost,
    uprights = [],
    fittedFrom = 0,
    numbers,
  } = props
  const frame = frameOf(WIDTH, HEIGHT, { left: 54, right: 160, top: 44 })
  const [first, last] = extentOf([[...readings, ...line, ...uprights].map(({ at }) => at)])
  const [, max] = extentOf([readings.map(({ value }) => value), line.map(({ upper }) => upper), [atMost]])
  const x = scaleUtc([first, last], [frame.left + 6, frame.right - 6])
  const y = scaleLinear([0, max * 1.05], [frame.bottom, frame.top]).nice(5)
  const kept = line.filter(({ value }) => value >= 0)
  const band = area<(typeof line)[number]>(
    ({ at }) => tenth(x(at)),
    ({ lower }) => tenth(y(Math.max(0, lower))),
    ({ upper }) => tenth(y(upper)),
  )
  const rings = (of: readonly Place[]) =>
    of.map(({ at, value }) => pointShape('ring', x(at), y(value), 3.2)).join('')
  return (
    <Drawing
      title={title}
      description={description}
      width={WIDTH}
      height={HEIGHT}
      size="wide"
      numbers={numbers}
    >
      {line.length > 0 && <path className="fill-copper-wash" fillOpacity="0.8" d={band([...line]) ?? ''} />}
      <Axes
        frame={frame}
        across={{ title: `Date, ${works().timeZone}`, ticks: timeTicks(x, 8, works().timeZone), grid: false }}
        up={{ title: axisTitle(up.label, printedUnit(up.unit)), ticks: numberTicks(y, 5) }}
      />
      {kept.length > 1 && (
        <path
          className="line-data outlined ink-copper"
          strokeDasharray="7 3"
          d={`M${kept.map(({ at, value }) => `${tenth(x(at))} ${tenth(y(value))}`).join('L')}`}
        />
      )}
      <path
        className="ink-copper outlined-filled"
        strokeWidth="1.4"
        d={rings(readings.filter(({ at }) => at < fittedFrom))}
      />
      <path className="ink-copper fill-current" d={rings(readings.filter(({ at }) => at >= fittedFrom))} />
      <LevelMarks frame={frame} levels={[{ name: 'at most', value: atMost, kind: 'at most' }]} y={y} />
      {uprights.map(({ at, name }, position) => (
        <g key={name}>
          <path className="line-chain" d={`M${tenth(x(at))} ${frame.top}V${frame.bottom}`} />
          <text
            x={x(at)}
            y={frame.top - 6 - 13 * (position % 2)}
            textAnchor={x(at) > (frame.left + frame.right) / 2 ? 'end' : 'start'}
            className="text-haloed"
          >
            {name}
          </text>
        </g>
      ))}
    </Drawing>
  )
}

const tenth = (value: number): number => Math.round(value * 10) / 10
