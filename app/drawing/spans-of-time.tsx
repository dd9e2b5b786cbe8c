import { scaleLog } from 'd3-scale'
import { DAYS_PER_MONTH } from '@/shared/quantity/calendar'
import { Drawing } from './drawing'
import type { Numbers } from './numbers-table'
import { pointShape, shapeFor } from './point-shape'

interface SpansOfTimeProps {
  title: string
  description: string
  rows: readonly SpanRow[]
  /** A time to reach, drawn upright. */
  wanted?: { months: number; name: string } | undefined
  numbers: Numbers
}

export interface SpanRow {
  readonly name: string
  /** One mark for every way of working it out; none when nothing can be said. */
  readonly months: readonly number[]
  /** Worked out by constants of something else: drawn dashed. */
  readonly borrowed?: boolean
  /** What stands there when there is nothing to draw. */
  readonly none?: string
  /** What the reader's own case is. */
  readonly strong?: boolean
}

const WIDTH = 440
const LEFT = 10
const RIGHT = WIDTH - 26
const TOP = 34
const ROW = 40
/** A row with nothing to draw needs only its line of text. */
const BARE_ROW = 20
const MIN = 0.01
const MAX = 12_000
const TICKS = [
  { months: 1 / DAYS_PER_MONTH, text: 'day' },
  { months: 7 / DAYS_PER_MONTH, text: 'week' },
  { months: 1, text: 'month' },
  { months: 12, text: 'year' },
  { months: 120, text: '10 years' },
  { months: 1200, text: '100 years' },
] as const

/** Spans of time on a logarithmic axis, a row each; what runs past the end is drawn as an arrow. */
export function SpansOfTime({ title, description, rows, wanted, numbers }: SpansOfTimeProps) {
  const tops = topsOf(rows)
  const bottom = tops.at(-1)!
  const x = scaleLog([MIN, MAX], [LEFT, RIGHT]).clamp(true)
  return (
    <Drawing title={title} description={description} width={WIDTH} height={bottom + 26} numbers={numbers}>
      <path
        className="line-grid"
        d={TICKS.map(({ months }) => `M${x(months)} ${TOP - 8}V${bottom}`).join('')}
      />
      <path className="line-thin" d={`M${LEFT} ${TOP - 8}V${bottom}H${RIGHT}`} />
      {TICKS.map(({ months, text }) => (
        <text key={text} x={x(months)} y={bottom + 17} textAnchor="middle" className="text-soft text-small">
          {text}
        </text>
      ))}
      {rows.map((row, at) => (
        <g key={row.name}>
          <text
            x={LEFT + 4}
            y={tops[at]! + 9}
            className={row.strong ? 'text-strong text-haloed' : 'text-haloed'}
          >
            {row.none ? `${row.name}: ${row.none}` : row.name}
          </text>
          <Span row={row} y={tops[at]! + 23} x={x} />
        </g>
      ))}
      {wanted && wanted.months > 0 && (
        <g>
          <path className="line-chain" d={`M${x(wanted.months)} ${TOP - 8}V${bottom}`} />
          <text x={x(wanted.months)} y={TOP - 14} textAnchor="middle" className="text-strong text-haloed">
            {wanted.name}
          </text>
        </g>
      )}
    </Drawing>
  )
}

/** Where each row begins, and where the last one ends. */
const topsOf = (rows: readonly SpanRow[]): number[] =>
  rows.reduce<number[]>(
    (tops, { months }) => [...tops, tops.at(-1)! + (months.length > 0 ? ROW : BARE_ROW)],
    [TOP],
  )

function Span({ row, y, x }: { row: SpanRow; y: number; x: (months: number) => number }) {
  if (row.months.length === 0) return null
  const [min, max] = [Math.min(...row.months), Math.max(...row.months)]
  const [from, to] = [x(min), x(max)]
  return (
    <g className={row.borrowed ? 'ink-tin' : 'ink-copper'}>
      <path
        className="outlined"
        strokeWidth={5}
        strokeDasharray={row.borrowed ? '3 2.5' : undefined}
        d={`M${from} ${y}H${to}`}
      />
      {row.months.map((months, at) =>
        months > MAX ? (
          <path key={at} className="fill-current" d={`M${RIGHT + 12} ${y}l-12 -6v12Z`} />
        ) : (
          <path
            key={at}
            className="outlined-filled"
            strokeWidth="1.6"
            d={pointShape(shapeFor(at === 0 ? 0 : 3), x(months), y, 4.5)}
          />
        ),
      )}
    </g>
  )
}
