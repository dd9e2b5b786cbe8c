import { scaleLinear, scaleUtc } from 'd3-scale'
import { line } from 'd3-shape'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { Moment } from '@/app/ui/date'
import { Axes } from './axes'
import { decimateByColumn, type Point } from './decimate'
import { Drawing } from './drawing'
import { frameOf, type Frame } from './frame'
import { LevelLimit } from './limit-line'
import { pointShape, shapeFor } from './point-shape'
import { spreadLabels } from './spread-labels'
import { axisTitle, numberTicks, timeTicks } from './ticks'

/** A reading of a log; `at` in milliseconds since 1970, UTC. */
export type Reading = { at: number; value: number }
/** A run rule that fired at a reading, in words. */
export type Signal = Reading & { says: string }

type LogOverTimeProps = {
  title: string
  characteristic: string
  unit: Unit
  /** In order of time; any number. */
  readings: readonly Reading[]
  centre?: number
  control?: { lower?: number; upper?: number }
  specification?: { atLeast?: number; atMost?: number }
  signals?: readonly Signal[]
}

const WIDTH = 900
const HEIGHT = 250
const SHOW_POINTS_UP_TO = 160

/** A log against time: line, centre, control limits dashed, specification limits toothed, signals by shape. */
export function LogOverTime(props: LogOverTimeProps) {
  const {
    title,
    characteristic,
    unit,
    readings,
    centre,
    control = {},
    specification = {},
    signals = [],
  } = props
  const frame = frameOf(WIDTH, HEIGHT, { left: 54, right: 160 })
  const levels = levelsOf(centre, control, specification)
  const [least, most] = extentOf([...readings.map(({ value }) => value), ...levels.map(({ value }) => value)])
  const x = scaleUtc([readings[0]?.at ?? 0, readings.at(-1)?.at ?? 1], [frame.left + 6, frame.right - 6])
  const room = (most - least) * 0.05
  const y = scaleLinear([least - room, most + room], [frame.bottom, frame.top]).nice(5)
  const points = readings.map(({ at, value }): Point => ({ x: x(at), y: y(value) }))
  const drawn = decimateByColumn(points, Math.round(frame.right - frame.left))
  const kinds = [...new Set(signals.map(({ says }) => says))]
  return (
    <Drawing
      title={title}
      description={`${readings.length} readings of ${characteristic.toLowerCase()} over time; ${signals.length} signals.`}
      width={WIDTH}
      height={HEIGHT + Math.ceil(kinds.length / 3) * 22}
      size="wide"
      numbers={numbersOf(props, levels)}
    >
      <Axes
        frame={frame}
        across={{ title: 'Date and time, UTC', ticks: timeTicks(x, 8), grid: false }}
        up={{ title: axisTitle(characteristic, printedUnit(unit)), ticks: numberTicks(y, 5) }}
      />
      <path
        className={`outlined ink-copper ${points.length > 1000 ? 'line-data-dense' : 'line-data'}`}
        d={pathOf(drawn)}
      />
      {points.length <= SHOW_POINTS_UP_TO && (
        <path
          className="ink-copper fill-current"
          d={points.map((point) => pointShape('ring', point.x, point.y, 2.4)).join('')}
        />
      )}
      <Levels frame={frame} levels={levels} y={y} />
      {signals.map(({ at, value, says }, position) => (
        <path
          key={position}
          className="ink-carmine outlined-filled"
          strokeWidth="1.8"
          d={pointShape(shapeFor(kinds.indexOf(says) + 2), x(at), y(value), 5)}
        />
      ))}
      {kinds.map((says, position) => (
        <g
          key={says}
          transform={`translate(${frame.left + (position % 3) * 270} ${HEIGHT + 14 + Math.floor(position / 3) * 22})`}
        >
          <path
            className="ink-carmine outlined"
            strokeWidth="1.8"
            d={pointShape(shapeFor(position + 2), 5, -4, 5)}
          />
          <text x={16}>{says}</text>
        </g>
      ))}
    </Drawing>
  )
}

type Level = { name: string; value: number; kind: 'centre' | 'control' | 'at least' | 'at most' }

function levelsOf(
  centre: number | undefined,
  control: { lower?: number; upper?: number },
  specification: { atLeast?: number; atMost?: number },
): Level[] {
  const all: (Omit<Level, 'value'> & { value: number | undefined })[] = [
    { name: 'at most', value: specification.atMost, kind: 'at most' },
    { name: 'upper control', value: control.upper, kind: 'control' },
    { name: 'centre', value: centre, kind: 'centre' },
    { name: 'lower control', value: control.lower, kind: 'control' },
    { name: 'at least', value: specification.atLeast, kind: 'at least' },
  ]
  return all.filter((level): level is Level => level.value !== undefined)
}

function Levels({
  frame,
  levels,
  y,
}: {
  frame: Frame
  levels: readonly Level[]
  y: (value: number) => number
}) {
  const { left, right, top, bottom } = frame
  const labels = spreadLabels(
    levels.map(({ value }) => y(value)),
    15,
    top,
    bottom,
  )
  return levels.map(({ name, value, kind }, position) => (
    <g key={name}>
      {kind === 'at most' && <LevelLimit y={y(value)} left={left} right={right} beyond="above" />}
      {kind === 'at least' && <LevelLimit y={y(value)} left={left} right={right} beyond="below" />}
      {kind === 'centre' && <path className="line-chain" d={`M${left} ${y(value)}H${right}`} />}
      {kind === 'control' && <path className="line-bound" d={`M${left} ${y(value)}H${right}`} />}
      <path className="line-thin" d={`M${right + 2} ${y(value)}L${right + 12} ${labels[position]}`} />
      <text x={right + 15} y={labels[position]! + 4}>
        {name} {formatNumber(value)}
      </text>
    </g>
  ))
}

const pathOf = (points: readonly Point[]): string =>
  line<Point>(
    ({ x }) => Math.round(x * 10) / 10,
    ({ y }) => Math.round(y * 10) / 10,
  )([...points]) ?? ''

/** Least and most of a long list, which would overflow the arguments of `Math.min`. */
function extentOf(values: readonly number[]): [number, number] {
  let [least, most] = [Infinity, -Infinity]
  for (const value of values) {
    if (value < least) least = value
    if (value > most) most = value
  }
  if (!(most > least)) return Number.isFinite(least) ? [least - 1, least + 1] : [0, 1]
  return [least, most]
}

function numbersOf({ readings, signals = [], unit }: LogOverTimeProps, levels: readonly Level[]) {
  const [least, most] = extentOf(readings.map(({ value }) => value))
  const said = (value: number) => formatQuantity(value, unit)
  const spanned = readings.length > 0
  return {
    columns: [{ label: 'What' }, { label: 'Value' }, { label: 'When', set: 'text' as const }],
    rows: [
      ['Readings', String(readings.length), spanned && <Moment key="from" at={new Date(readings[0]!.at)} />],
      ...(spanned
        ? [
            [
              'Last reading',
              said(readings.at(-1)!.value),
              <Moment key="to" at={new Date(readings.at(-1)!.at)} />,
            ],
            ['Lowest', said(least), ''],
            ['Highest', said(most), ''],
          ]
        : []),
      ...levels.map(({ name, value }) => [name, said(value), '']),
      ...signals.map(({ says, value, at }) => [
        `Signal: ${says}`,
        said(value),
        <Moment key={at} at={new Date(at)} />,
      ]),
    ],
  }
}
