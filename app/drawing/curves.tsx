import type { ReactNode } from 'react'
import { scaleLinear, scaleLog } from 'd3-scale'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { UprightLimit } from './limit-line'
import { logTicks, logTicksAcross } from './log-ticks'
import type { Numbers } from './numbers-table'
import {
  BandLayer,
  dashFor,
  EndNames,
  LineLayer,
  NamedLevel,
  UprightLayer,
  type PlotPlace,
  type XBounds,
  type XY,
} from './plot-layers'
import { pointShape, shapeFor } from './point-shape'
import { roomForText } from './room-for-text'
import { spreadLabels } from './spread-labels'
import { axisTitle, numberTicks } from './ticks'

type Axis = { label: string; unit: Unit; from: number; to: number; log?: boolean }

/** A line, told apart by its dash and by its name at its end. */
export type Curve = { name: string; points: readonly XY[]; heavy?: boolean }
/** Where a value is known only between two bounds. */
export type Band = { name: string; points: readonly XBounds[] }
/** A limit, toothed on the side that is not allowed. */
export type CurveLimit =
  | { y: number; name: string; beyond: 'above' | 'below' }
  | { x: number; name: string; beyond: 'left' | 'right' }

type NamedPoint = { x: number; y: number; name: string }

type CurvesProps = {
  title: string
  description: string
  across: Axis
  up: Axis
  curves: readonly Curve[]
  bands?: readonly Band[]
  limits?: readonly CurveLimit[]
  /** A value to read off across, drawn upright. */
  upright?: { x: number; name: string }
  /** Points of the design, each with its own shape. */
  points?: readonly NamedPoint[]
  numbers: Numbers
  numbersPlace?: 'beside' | 'below' | 'folded'
  note?: ReactNode
  /** Room at the right for the names of the lines. */
  marginValue?: number
}

const WIDTH = 440
const HEIGHT = 290

/** Curves over linear or logarithmic axes, with bands of uncertainty, limits, and the design's own points among them. */
export function Curves(props: CurvesProps) {
  const {
    title,
    description,
    across,
    up,
    curves,
    bands = [],
    limits = [],
    numbers,
    numbersPlace,
    note,
  } = props
  const names = curves.map(({ name }) => name)
  const { top, bottom } = frameOf(WIDTH, HEIGHT)
  const y = scaleOf(up, [bottom, top])
  const upTicks = ticksOf(up, y, 5)
  const frame = frameOf(WIDTH, HEIGHT, {
    left: Math.max(46, roomForText(upTicks.map(({ text }) => text)) + 10),
    right: Math.max(props.marginValue ?? 94, roomForText(names) + 14),
  })
  const x = scaleOf(across, [frame.left, frame.right])
  const place = { x, y, frame }
  return (
    <Drawing
      {...{ title, description, numbers, note }}
      width={WIDTH}
      height={HEIGHT}
      numbersPlace={numbersPlace}
    >
      <Axes
        frame={frame}
        across={{
          title: axisTitle(across.label, printedUnit(across.unit)),
          ticks: across.log ? logTicksAcross(across.from, across.to, x) : ticksOf(across, x, 6),
        }}
        up={{ title: axisTitle(up.label, printedUnit(up.unit)), ticks: upTicks }}
      />
      {bands.map((band) => (
        <BandLayer key={band.name} place={place} points={band.points} opacity={0.8} />
      ))}
      {curves.map(({ name, points, heavy }, at) => (
        <LineLayer
          key={name}
          place={place}
          points={points}
          ink={heavy ? undefined : 'line-data outlined'}
          dash={dashFor(at)}
        />
      ))}
      <EndNames
        led
        frame={frame}
        gap={14}
        top={frame.top + 4}
        ends={curves.map(({ name, points }) => ({ name, height: y(points.at(-1)?.[1] ?? 0) }))}
      />
      {limits.map((limit) => (
        <LimitDrawn key={limit.name} limit={limit} place={place} />
      ))}
      {props.upright && <UprightLayer place={place} at={props.upright.x} name={props.upright.name} />}
      <Points points={props.points ?? []} place={place} />
    </Drawing>
  )
}

type Scale = ReturnType<typeof scaleLinear<number>> | ReturnType<typeof scaleLog<number>>

/** Held inside the axis, so that a steep curve ends at the frame and not on the words around it. */
const scaleOf = ({ from, to, log }: Axis, range: [number, number]): Scale =>
  log ? scaleLog([from, to], range).clamp(true) : scaleLinear([from, to], range).clamp(true)

const ticksOf = (axis: Axis, scale: Scale, count: number) =>
  axis.log
    ? logTicks(axis.from, axis.to, scale)
    : numberTicks(scale as ReturnType<typeof scaleLinear<number>>, count)

function LimitDrawn({ limit, place }: { limit: CurveLimit; place: PlotPlace }) {
  if ('y' in limit)
    return <NamedLevel place={place} limit={limit} drop={limit.beyond === 'below' ? -5 : 15} />
  const { frame, x } = place
  return (
    <g>
      <UprightLimit x={x(limit.x)} top={frame.top} bottom={frame.bottom} beyond={limit.beyond} />
      <text x={x(limit.x) + 5} y={frame.bottom - 7} className="text-haloed">
        {limit.name}
      </text>
    </g>
  )
}

/** The points of the design with their names, on whichever side leaves them room. */
function Points({ points, place: { x, y, frame } }: { points: readonly NamedPoint[]; place: PlotPlace }) {
  const heights = spreadLabels(
    points.map((point) => y(point.y) + 4),
    13,
    frame.top + 6,
    frame.bottom - 4,
  )
  const far = frame.left + 0.68 * (frame.right - frame.left)
  return points.map((point, at) => {
    const [atX, left] = [x(point.x), x(point.x) > far]
    return (
      <g key={at}>
        <path
          className="fill-sheet"
          stroke="var(--color-ink)"
          strokeWidth="1.5"
          d={pointShape(shapeFor(at), atX, y(point.y), 4.5)}
        />
        <text
          x={atX + (left ? -9 : 9)}
          y={heights[at]}
          textAnchor={left ? 'end' : 'start'}
          className="text-small text-haloed"
        >
          {point.name}
        </text>
      </g>
    )
  })
}
