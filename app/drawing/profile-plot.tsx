import { scaleLinear } from 'd3-scale'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { Axes } from './axes'
import { decimateByColumn } from './decimate'
import { Drawing } from './drawing'
import { extentOf } from './extent'
import { frameOf } from './frame'
import { LevelMarks } from './level-marks'
import type { Numbers } from './numbers-table'
import { axisTitle, numberTicks } from './ticks'

/** One thermocouple's pass; `tag` is what its peak is marked with. */
export type ProfileTrace = {
  tag: string
  name: string
  timesS: readonly number[]
  temperaturesC: readonly number[]
  peakC: number
  peakAtS: number
}

type ProfilePlotProps = {
  title: string
  traces: readonly ProfileTrace[]
  liquidusC: number
  /** The temperatures between which a soak is counted. */
  soak?: { fromC: number; toC: number }
  /** Where the peaks must lie. */
  peak?: { atLeast?: number; atMost?: number }
  numbers: Numbers
}

const WIDTH = 900
const HEIGHT = 330
const DASHES = [undefined, '7 3', '2.5 2.5', '9 2.5 2 2.5', '14 4', '4 2 1 2 1 2', '1 2', '12 2 2 2 2 2']

/** Temperatures of a board's places over one pass, against liquidus (chain), soak (hatched band) and the window of the peak (toothed). */
export function ProfilePlot({ title, traces, liquidusC, soak, peak = {}, numbers }: ProfilePlotProps) {
  const frame = frameOf(WIDTH, HEIGHT, { left: 54, right: 160 })
  const columns = Math.round(frame.right - frame.left)
  const levels = [
    ...(peak.atMost === undefined
      ? []
      : [{ name: 'peak at most', value: peak.atMost, kind: 'at most' as const }]),
    ...(peak.atLeast === undefined
      ? []
      : [{ name: 'peak at least', value: peak.atLeast, kind: 'at least' as const }]),
    { name: 'liquidus', value: liquidusC, kind: 'named' as const },
  ]
  const [, latest] = extentOf(traces.map(({ timesS }) => timesS))
  const [, hottest] = extentOf([...traces.map(({ temperaturesC }) => temperaturesC), [peak.atMost ?? 0]])
  const x = scaleLinear([0, latest], [frame.left, frame.right])
  const y = scaleLinear([0, hottest * 1.04], [frame.bottom, frame.top]).nice(6)
  return (
    <Drawing
      title={title}
      description={traces
        .map(({ name, peakC }) => `${name} peaks at ${formatQuantity(peakC, '°C')}`)
        .join('; ')}
      width={WIDTH}
      height={HEIGHT + Math.ceil(traces.length / 3) * 22}
      size="wide"
      numbers={numbers}
      numbersPlace="below"
    >
      {soak && (
        <g>
          <path
            className="fill-copper-wash"
            fillOpacity="0.55"
            d={`M${frame.left} ${y(soak.toC)}H${frame.right}V${y(soak.fromC)}H${frame.left}Z`}
          />
          <text x={frame.right - 6} y={y(soak.toC) + 14} textAnchor="end" className="text-haloed text-small">
            soak, {formatNumber(soak.fromC)} to {formatNumber(soak.toC)} °C on the way up
          </text>
        </g>
      )}
      <Axes
        frame={frame}
        across={{ title: axisTitle('Time from the first sample', 's'), ticks: numberTicks(x, 9) }}
        up={{ title: axisTitle('Temperature', '°C'), ticks: numberTicks(y, 6) }}
      />
      <path className="line-chain" d={`M${frame.left} ${y(liquidusC)}H${frame.right}`} />
      {traces.map(({ tag, timesS, temperaturesC }, position) => (
        <path
          key={tag}
          className="outlined ink-copper line-data"
          strokeDasharray={DASHES[position % DASHES.length]}
          d={`M${decimateByColumn(
            timesS.map((time, index) => ({ x: x(time), y: y(temperaturesC[index]!) })),
            columns,
          )
            .map((point) => `${tenth(point.x)} ${tenth(point.y)}`)
            .join('L')}`}
        />
      ))}
      <LevelMarks frame={frame} levels={levels} y={y} />
      {traces.map(({ tag, peakC, peakAtS }) => (
        <circle
          key={tag}
          cx={x(peakAtS)}
          cy={y(peakC)}
          r={3}
          className="fill-sheet"
          stroke="var(--color-ink)"
          strokeWidth="1.4"
        />
      ))}
      {traces.map(({ tag, name, peakC }, position) => (
        <g
          key={tag}
          transform={`translate(${frame.left + (position % 3) * 280} ${HEIGHT + 12 + Math.floor(position / 3) * 22})`}
        >
          <path
            className="outlined ink-copper line-data"
            strokeDasharray={DASHES[position % DASHES.length]}
            d="M0 -4H30"
          />
          <text x={36}>
            {name}, {formatQuantity(peakC, '°C')}
          </text>
        </g>
      ))}
    </Drawing>
  )
}

const tenth = (value: number): number => Math.round(value * 10) / 10
