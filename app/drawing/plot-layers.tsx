import { area, line } from 'd3-shape'
import type { Frame } from './frame'
import { LevelLimit } from './limit-line'
import { pointShape } from './point-shape'
import { spreadLabels } from './spread-labels'

/** Where the layers of a plot lie: its frame and its scales. */
export interface PlotPlace {
  readonly frame: Frame
  readonly x: (value: number) => number
  readonly y: (value: number) => number
}

export type XY = readonly [x: number, y: number]
/** A value known only between two bounds. */
export type XBounds = readonly [x: number, min: number, max: number]

/** Dashes that tell lines of one family apart, in the order they are handed out. */
const DASHES = [undefined, '7 3', '2.5 2.5', '9 2.5 2 2.5', '14 4', '4 2 1 2 1 2', '1.5 4']
export const dashFor = (position: number): string | undefined => DASHES[position % DASHES.length]

/** The inside of the frame, for lines that run out of it. */
export const FrameClip = ({ id, frame: { left, right, top, bottom } }: { id: string; frame: Frame }) => (
  <clipPath id={id}>
    <rect x={left} y={top} width={right - left} height={bottom - top} />
  </clipPath>
)

/** Where the values lie, washed. */
export function BandLayer({
  place: { x, y },
  points,
  opacity,
  clip,
}: {
  place: PlotPlace
  points: readonly XBounds[]
  opacity?: number
  clip?: string
}) {
  const band = area<XBounds>(
    ([at]) => x(at),
    ([, min]) => y(min),
    ([, , max]) => y(max),
  )
  return (
    <path
      className="fill-copper-wash"
      fillOpacity={opacity}
      clipPath={clip && `url(#${clip})`}
      d={band([...points]) ?? ''}
    />
  )
}

/** A line through points in order. */
export function LineLayer({
  place: { x, y },
  points,
  ink = 'line-data outlined ink-copper',
  dash,
  clip,
}: {
  place: PlotPlace
  points: readonly XY[]
  /** The class of the line. */
  ink?: string
  dash?: string
  clip?: string
}) {
  const lineOf = line<XY>(
    ([one]) => x(one),
    ([, other]) => y(other),
  )
  return (
    <path
      className={ink}
      strokeDasharray={dash}
      clipPath={clip && `url(#${clip})`}
      d={lineOf([...points]) ?? ''}
    />
  )
}

/** Points as counted or read, ringed. */
export const RingsLayer = ({ place: { x, y }, points }: { place: PlotPlace; points: readonly XY[] }) =>
  points.map(([one, other], at) => (
    <path
      key={at}
      className="fill-sheet"
      stroke="var(--color-ink)"
      strokeWidth="1.4"
      d={pointShape('ring', x(one), y(other), 4)}
    />
  ))

interface EndNamesProps {
  frame: Frame
  /** Each name with the height at which its line ends, in the drawing's units. */
  ends: readonly { name: string; height: number }[]
  gap?: number
  top?: number
  /** A stroke from the end of the line to its name. */
  led?: boolean
  size?: string
}

/** What lines are called, at the right of where they end; moved apart where they would overprint. */
export function EndNames({ frame, ends, gap = 15, top = frame.top, led = false, size }: EndNamesProps) {
  const heights = spreadLabels(
    ends.map(({ height }) => height),
    gap,
    top,
    frame.bottom,
  )
  return ends.map(({ name, height }, at) => (
    <g key={name}>
      {led && (
        <path className="line-thin" d={`M${frame.right + 1} ${height}L${frame.right + 8} ${heights[at]}`} />
      )}
      <text x={frame.right + (led ? 11 : 7)} y={heights[at]! + 4} className={size}>
        {name}
      </text>
    </g>
  ))
}

/** A limit across with its name, `drop` below its line. */
export const NamedLevel = ({
  place: { frame, y },
  limit,
  drop,
}: {
  place: PlotPlace
  limit: { y: number; name: string; beyond: 'above' | 'below' }
  drop: number
}) => (
  <g>
    <LevelLimit y={y(limit.y)} left={frame.left} right={frame.right} beyond={limit.beyond} />
    <text x={frame.left + 6} y={y(limit.y) + drop} className="text-haloed">
      {limit.name}
    </text>
  </g>
)

/** A moment or value to read off, upright; its name on whichever side leaves it room. */
export function UprightLayer({
  place: { frame, x },
  at,
  name,
}: {
  place: PlotPlace
  at: number
  name: string
}) {
  const nearRight = x(at) > (frame.left + frame.right) / 2
  return (
    <g>
      <path className="line-chain" d={`M${x(at)} ${frame.top}V${frame.bottom}`} />
      <text
        x={x(at) + (nearRight ? -5 : 5)}
        y={frame.top + 11}
        textAnchor={nearRight ? 'end' : 'start'}
        className="text-haloed"
      >
        {name}
      </text>
    </g>
  )
}
