import { scaleLinear } from 'd3-scale'
import { AcrossTicks } from './across-ticks'
import { Drawing } from './drawing'
import { UprightLimit } from './limit-line'
import type { Numbers } from './numbers-table'
import { numberTicks } from './ticks'

export interface RangeInWindow {
  readonly name: string
  readonly min: number
  /** Left out where only the ends are known. */
  readonly nominal?: number | undefined
  /** Undefined where nothing bounds it. */
  readonly max: number | undefined
  /** Undefined where no value would do; open upwards without a `to`. */
  readonly window?: { readonly from: number; readonly to?: number | undefined } | undefined
  /** Said at the right, such as what would serve. */
  readonly message: string
}

interface RangesInWindowsProps {
  title: string
  description: string
  /** "Finished hole, mm". */
  axis: string
  rows: readonly RangeInWindow[]
  numbers: Numbers
  note?: string
}

const WIDTH = 440
const LEFT = 8
const RIGHT = WIDTH - 12
const TOP = 10
const ROW = 46

/** Toleranced sizes as bars, each in the window it must keep to, on one common scale. */
export function RangesInWindows({ title, description, axis, rows, numbers, note }: RangesInWindowsProps) {
  const all = rows
    .flatMap(({ min, max, window }) => [min, max, window?.from, window?.to])
    .filter((value) => value !== undefined)
  const x = scaleLinear([Math.min(...all), Math.max(...all)], [LEFT + 14, RIGHT - 14])
  const bottom = TOP + rows.length * ROW + 4
  return (
    <Drawing
      {...{ title, description, numbers, note }}
      width={WIDTH}
      height={bottom + 40}
      numbersPlace="beside"
    >
      {rows.map((row, at) => (
        <Row key={at} row={row} y={TOP + at * ROW} x={x} />
      ))}
      <path className="line-thin" d={`M${LEFT} ${bottom}H${RIGHT}`} />
      <AcrossTicks ticks={numberTicks(x, 7)} bottom={bottom} />
      <text x={RIGHT} y={bottom + 34} textAnchor="end">
        {axis}
      </text>
    </Drawing>
  )
}

function Row({ row, y, x }: { row: RangeInWindow; y: number; x: (value: number) => number }) {
  const { name, min, nominal, max, window, message } = row
  const middle = y + 30
  const to = window?.to === undefined ? RIGHT : x(window.to)
  const end = max === undefined ? RIGHT - 2 : x(max)
  return (
    <g>
      <text x={LEFT} y={y + 12} className="text-haloed">
        {name}
      </text>
      <text x={RIGHT} y={y + 12} textAnchor="end" className="text-soft text-haloed">
        {message}
      </text>
      <path className="line-grid" d={`M${LEFT} ${middle}H${RIGHT}`} />
      {window && (
        <g>
          <rect
            x={x(window.from)}
            y={middle - 9}
            width={Math.max(0, to - x(window.from))}
            height={18}
            className="fill-mask-wash"
          />
          <UprightLimit x={x(window.from)} top={middle - 11} bottom={middle + 11} beyond="left" />
          {window.to !== undefined && (
            <UprightLimit x={to} top={middle - 11} bottom={middle + 11} beyond="right" />
          )}
        </g>
      )}
      <path
        className="line-heavy"
        d={`M${x(min)} ${middle - 6}v12M${x(min)} ${middle}H${end}${max === undefined ? 'm-5 -4l5 4l-5 4' : `m0 -6v12`}`}
      />
      {nominal !== undefined && (
        <path className="fill-ink" d={`M${x(nominal)} ${middle - 6}l4 6l-4 6l-4 -6Z`} />
      )}
    </g>
  )
}
