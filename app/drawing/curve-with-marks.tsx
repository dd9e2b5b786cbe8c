import { scaleLinear } from 'd3-scale'
import { line } from 'd3-shape'
import { formatQuantity } from '@/shared/quantity/format'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { Axes } from './axes'
import { decimateByColumn } from './decimate'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { axisTitle, numberTicks } from './ticks'

/** A point of the curve that has a meaning, such as "zero cross" or "force at 2 s". */
export type CurveMark = { x: number; y: number; name: string }

type CurveWithMarksProps = {
  title: string
  across: { label: string; unit: Unit }
  up: { label: string; unit: Unit }
  /** In order of x. */
  points: readonly { x: number; y: number }[]
  marks: readonly CurveMark[]
  /** Levels to draw across, such as the buoyancy-corrected zero. */
  levels?: readonly { y: number; name: string }[]
}

const WIDTH = 440
const HEIGHT = 280
/** Marks nearer than this, in the drawing's units, would overprint each other's letters. */
const NEAR = 22

/** A measured curve, such as wetting force against time, with its marks lettered. */
export function CurveWithMarks({ title, across, up, points, marks, levels = [] }: CurveWithMarksProps) {
  const frame = frameOf(WIDTH, HEIGHT)
  const heights = [...points, ...marks, ...levels].map(({ y }) => y)
  const x = scaleLinear([points[0]?.x ?? 0, points.at(-1)?.x ?? 1], [frame.left, frame.right])
  const [min, max] = [Math.min(0, ...heights), Math.max(0, ...heights)]
  const marginValue = (max - min) * 0.06
  const y = scaleLinear([min - marginValue, max + marginValue], [frame.bottom, frame.top]).nice(5)
  const drawn = decimateByColumn(
    points.map((point) => ({ x: x(point.x), y: y(point.y) })),
    frame.right - frame.left,
  )
  const place = (mark: CurveMark) => ({
    across: x(mark.x),
    up: y(mark.y),
    last: x(mark.x) > frame.right - 12,
  })
  const isNear = (one: CurveMark, other: CurveMark): boolean =>
    Math.abs(x(one.x) - x(other.x)) < NEAR && Math.abs(y(one.y) - y(other.y)) < NEAR
  return (
    <Drawing
      title={title}
      description={`${up.label} against ${across.label.toLowerCase()}. ${marks.map(({ name }, at) => `${letter(at)}: ${name}`).join('; ')}.`}
      width={WIDTH}
      height={HEIGHT}
      numbersPlace="beside"
      numbers={{
        columns: [{ label: 'Mark' }, { label: across.label }, { label: up.label }],
        rows: marks.map((mark, at) => [
          `${letter(at)} – ${mark.name}`,
          formatQuantity(mark.x, across.unit, 3),
          formatQuantity(mark.y, up.unit, 3),
        ]),
      }}
    >
      <Axes
        frame={frame}
        across={{ title: axisTitle(across.label, printedUnit(across.unit)), ticks: numberTicks(x, 6) }}
        up={{ title: axisTitle(up.label, printedUnit(up.unit)), ticks: numberTicks(y, 6) }}
      />
      <path className="line-thin" d={`M${frame.left} ${y(0)}H${frame.right}`} />
      {levels.map((level) => (
        <g key={level.name}>
          <path className="line-bound" d={`M${frame.left} ${y(level.y)}H${frame.right}`} />
          <text
            x={frame.right - 5}
            y={y(level.y) + (level.y < 0 ? 14 : -5)}
            textAnchor="end"
            className="text-haloed"
          >
            {level.name}
          </text>
        </g>
      ))}
      <path
        className="line-data outlined ink-copper"
        d={
          line<{ x: number; y: number }>(
            (point) => point.x,
            (point) => point.y,
          )([...drawn]) ?? ''
        }
      />
      {marks.map((mark, at) => (
        <g key={mark.name}>
          <circle
            cx={x(mark.x)}
            cy={y(mark.y)}
            r={4}
            className="fill-sheet"
            stroke="var(--color-ink)"
            strokeWidth="1.6"
          />
          <Letter
            at={at}
            crowded={marks.slice(0, at).some((before) => isNear(before, mark))}
            {...place(mark)}
          />
        </g>
      ))}
    </Drawing>
  )
}

interface LetterProps {
  at: number
  /** Another mark is so near that its letter would be overprinted. */
  crowded: boolean
  across: number
  up: number
  /** At the right edge, where there is no room beside it. */
  last: boolean
}

/** A mark's letter: right below it; left above it where another mark stands close. */
const Letter = ({ at, crowded, across, up, last }: LetterProps) => (
  <text
    x={across + (crowded || last ? -7 : 7)}
    y={up + (crowded ? -7 : 15)}
    textAnchor={crowded || last ? 'end' : 'start'}
    className="text-strong text-haloed"
  >
    {letter(at)}
  </text>
)

const letter = (position: number): string => String.fromCharCode(65 + position)
