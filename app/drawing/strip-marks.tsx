import type { Tick } from './ticks'

/** Something to be read off a strip: where it stands, in hundredths of the width, and what it is. */
export interface StripMark {
  readonly at: number
  readonly text: string
}

const ROW_PX = 17
const AXIS_PX = 40

interface MarkRowsProps {
  readonly marks: readonly StripMark[]
  /** Whether they point at what stands above or below. */
  readonly tip: 'up' | 'down'
  /** Under the marks, the numbers of the scale and what it measures. */
  readonly ticks?: readonly Tick[]
  readonly title?: string
}

/** Marks with their words, each in a row of its own, so that no word meets another or a dot. */
export function MarkRows({ marks, tip, ticks, title }: MarkRowsProps) {
  const axis = ticks ? AXIS_PX : 0
  const top = marks.length * ROW_PX
  const height = top + axis
  return (
    <svg className="strip-marks" width="100%" height={height} aria-hidden="true">
      {marks.map(({ at, text }, row) => {
        const middle = row * ROW_PX + ROW_PX / 2
        const toLeft = at > 50
        return (
          <g key={text}>
            <svg x={`${at}%`} y={middle} overflow="visible">
              <path className="fill-ink" d={tip === 'up' ? 'M-4 3h8L0 -4Z' : 'M-4 -3h8L0 4Z'} />
            </svg>
            <text x={`${at}%`} y={middle + 4} dx={toLeft ? -9 : 9} textAnchor={toLeft ? 'end' : 'start'}>
              {text}
            </text>
          </g>
        )
      })}
      {ticks?.map(({ at, text }) => (
        <g key={at}>
          <line className="line-thin" x1={`${at}%`} x2={`${at}%`} y1={top} y2={top + 4} />
          <text x={`${at}%`} y={top + 16} textAnchor="middle" className="text-soft">
            {text}
          </text>
        </g>
      ))}
      {title && (
        <text x="100%" y={top + 33} textAnchor="end">
          {title}
        </text>
      )}
    </svg>
  )
}
