import { scaleLinear, scaleUtc } from 'd3-scale'
import { works } from '@/lib/settings/works'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { Axes } from './axes'
import { decimateByColumn, type Point } from './decimate'
import { Drawing } from './drawing'
import { extentOf } from './extent'
import { frameOf } from './frame'
import { LevelMarks, levelInWords, type Level } from './level-marks'
import { stepPath } from './limit-steps'
import type { Numbers } from './numbers-table'
import { pointShape } from './point-shape'
import { roomForText } from './room-for-text'
import { RUN_LEGEND_HEIGHT, RunMarks, runsDescribed, type RunMark } from './run-marks'
import { legendHeight, SignalMarks } from './signal-marks'
import { axisTitle, numberTicks, timeTicks } from './ticks'

/** A stretch of the points with limits of its own, `from` up to, not including, `to`. */
export type Stretch = { readonly name: string; readonly from: number; readonly to: number }

export type ControlPlotProps = {
  title: string
  description: string
  up: { label: string; unit: Unit }
  /** Instants (milliseconds since 1970, UTC) or, when they are only in order, their numbers. */
  across: { kind: 'time' | 'order'; title: string; places: readonly number[] }
  /** One or more lines over the same points. */
  lines: readonly ArrayLike<number>[]
  /** At every point; NaN where there are none. */
  limits?: { centre: ArrayLike<number>; lower: ArrayLike<number>; upper: ArrayLike<number> }
  stretches?: readonly Stretch[]
  specification?: { atLeast?: number; atMost?: number }
  signals?: readonly { point: number; line: number; message: string }[]
  size?: 'tall' | 'low'
  /** What the limits are called where they are no control limits. */
  limitNames?: { upper: string; centre: string; lower: string }
  /** What the points cannot fall below, such as nought for a range. */
  floor?: number
  /** Runs of work that the readings are taken for, marked on the time axis. */
  runs?: readonly RunMark[]
  note?: string
  numbers: Numbers
}

const WIDTH = 900
const SHOW_POINTS_UP_TO = 160

/** Points in order with what they are held against: centre (chain), control limits (dashed), specified limits (toothed), signals by shape. */
export function ControlPlot(props: ControlPlotProps) {
  const { up, across, lines, limits, specification = {}, signals = [], size = 'tall' } = props
  const { places } = across
  const count = places.length
  const stretches = props.stretches ?? [{ name: '', from: 0, to: count }]
  const height = size === 'tall' ? 250 : 190
  const specified = specifiedLevels(specification)
  const levels = [...specified, ...(limits ? lastLevels(limits, count, props.limitNames) : [])]
  const frame = frameOf(WIDTH, height, {
    left: 54,
    right: Math.max(160, roomForText(levels.map(levelInWords), 'wide') + 18),
  })
  const columns = Math.round(frame.right - frame.left)
  const [min, max] = extentOf([
    ...lines,
    ...(limits ? [limits.lower, limits.upper, limits.centre] : []),
    specified.map(({ value }) => value),
  ])
  const room = (max - min) * 0.05
  const y = scaleLinear(
    [Math.max(min - room, props.floor ?? -Infinity), max + room],
    [frame.bottom, frame.top],
  ).nice(5)
  const span: [number, number] = [frame.left + 6, frame.right - 6]
  const runs = across.kind === 'time' ? (props.runs ?? []) : []
  const [earliest, latest] = [runs[0]?.at ?? Infinity, runs[runs.length - 1]?.at ?? -Infinity]
  const time = scaleUtc([Math.min(places[0] ?? 0, earliest), Math.max(places[count - 1] ?? 1, latest)], span)
  const order = scaleLinear([places[0] ?? 0, Math.max(places[count - 1] ?? 1, (places[0] ?? 0) + 1)], span)
  const x = (place: number): number => (across.kind === 'time' ? time(place) : order(place))
  const at = places.map(x)
  const kinds = [...new Set(signals.map(({ message }) => message))]
  const signalsHeight = legendHeight(kinds.length)
  return (
    <Drawing
      title={props.title}
      description={runs.length > 0 ? `${props.description} ${runsDescribed(runs)}` : props.description}
      width={WIDTH}
      height={height + signalsHeight + (runs.length > 0 ? RUN_LEGEND_HEIGHT : 0)}
      size="wide"
      numbers={props.numbers}
      note={props.note || undefined}
    >
      <Axes
        frame={frame}
        across={{
          title: across.title,
          ticks:
            across.kind === 'time' ? timeTicks(time, 8, works().timeZone) : wholeTicks(numberTicks(order, 8)),
          grid: false,
        }}
        up={{ title: axisTitle(up.label, printedUnit(up.unit)), ticks: numberTicks(y, 5) }}
      />
      {stretches.slice(1).map(({ name, from }) => (
        <g key={from}>
          <path className="line-chain" d={`M${half(at, from)} ${frame.top - 4}V${frame.bottom}`} />
          <text x={half(at, from) + 4} y={frame.top + 6} className="text-haloed text-small">
            {name}
          </text>
        </g>
      ))}
      {lines.map((line, position) => (
        <LineOfPoints key={position} at={at} line={line} y={y} columns={columns} dashed={position > 0} />
      ))}
      {limits && (
        <g>
          <path className="line-chain outlined" d={stepPath(at, limits.centre, y, stretches, columns)} />
          <path className="line-bound" d={stepPath(at, limits.lower, y, stretches, columns)} />
          <path className="line-bound" d={stepPath(at, limits.upper, y, stretches, columns)} />
        </g>
      )}
      <LevelMarks frame={frame} levels={levels} y={y} />
      <SignalMarks
        marks={signals.map(({ point, line, message }) => ({
          x: at[point]!,
          y: y(lines[line]![point]!),
          message,
        }))}
        legend={{ left: frame.left, top: height + 14 }}
      />
      {runs.length > 0 && (
        <RunMarks
          runs={runs}
          x={time}
          y={frame.bottom - 5}
          legend={{ left: frame.left, top: height + signalsHeight + 14 }}
        />
      )}
    </Drawing>
  )
}

function LineOfPoints({
  at,
  line,
  y,
  columns,
  dashed,
}: {
  at: readonly number[]
  line: ArrayLike<number>
  y: (value: number) => number
  columns: number
  dashed: boolean
}) {
  const points = at.map((x, index): Point => ({ x, y: y(line[index]!) }))
  const drawn = decimateByColumn(points, columns)
  const path = drawn.map((point) => `${tenth(point.x)} ${tenth(point.y)}`).join('L')
  return (
    <g className="ink-copper">
      <path
        className={`outlined ${points.length > 1000 ? 'line-data-dense' : 'line-data'}`}
        strokeDasharray={dashed ? '7 3' : undefined}
        d={path && `M${path}`}
      />
      {points.length <= SHOW_POINTS_UP_TO && (
        <path
          className="fill-current"
          d={points.map((point) => pointShape('ring', point.x, point.y, 2.4)).join('')}
        />
      )}
    </g>
  )
}

const specifiedLevels = ({ atLeast, atMost }: { atLeast?: number; atMost?: number }): Level[] => [
  ...(atMost === undefined ? [] : [{ name: 'at most', value: atMost, kind: 'at most' as const }]),
  ...(atLeast === undefined ? [] : [{ name: 'at least', value: atLeast, kind: 'at least' as const }]),
]

/** The limits at the last point, named at its right; the lines themselves are drawn in steps. */
function lastLevels(
  limits: NonNullable<ControlPlotProps['limits']>,
  count: number,
  names = { upper: 'upper control', centre: 'centre', lower: 'lower control' },
): Level[] {
  const named = (name: string, values: ArrayLike<number>): Level[] => {
    const value = values[count - 1]
    return value !== undefined && Number.isFinite(value) ? [{ name, value, kind: 'named' }] : []
  }
  return [
    ...named(names.upper, limits.upper),
    ...named(names.centre, limits.centre),
    ...named(names.lower, limits.lower),
  ]
}

/** Half way between a point and the one before it. */
const half = (at: readonly number[], index: number): number =>
  tenth(((at[index - 1] ?? at[index]!) + at[index]!) / 2)
const wholeTicks = (ticks: ReturnType<typeof numberTicks>) => ticks.filter(({ text }) => !text.includes('.'))
const tenth = (value: number): number => Math.round(value * 10) / 10
