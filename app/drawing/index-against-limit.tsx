import { scaleLinear } from 'd3-scale'
import { formatNumber } from '@/shared/quantity/format'
import { Drawing } from './drawing'
import { UprightLimit } from './limit-line'
import { pointShape } from './point-shape'
import { numberTicks } from './ticks'

interface IndexAgainstLimitProps {
  title: string
  rows: readonly IndexRow[]
  atLeast: number
  /** In words, such as "95 % confident". */
  confidence: string
}

export interface IndexRow {
  readonly name: string
  readonly readings: number
  /** Undefined where no index can be given: `none` says why. */
  readonly index?: number
  readonly bound?: number
  readonly none?: string
}

const WIDTH = 440
const LEFT = 12
const RIGHT = WIDTH - 16
const TOP = 34
const ROW = 46

/** Capability indexes with what the readings prove of them, against what is asked. */
export function IndexAgainstLimit({ title, rows, atLeast, confidence }: IndexAgainstLimitProps) {
  const bottom = TOP + rows.length * ROW
  const values = rows.flatMap(({ index, bound }) => [index, bound].filter((one) => one !== undefined))
  const x = scaleLinear([Math.min(0, ...values), Math.max(atLeast, ...values) * 1.05], [LEFT, RIGHT]).nice(6)
  const said = (value: number | undefined) => (value === undefined ? '–' : formatNumber(value, 3))
  return (
    <Drawing
      title={title}
      description={rows
        .map(({ name, index, bound, none }) =>
          index === undefined
            ? `${name}: ${none}`
            : `${name}: index ${said(index)}, ${confidence} at least ${said(bound)}`,
        )
        .join('; ')}
      width={WIDTH}
      height={bottom + 60}
      numbers={{
        columns: [
          { label: 'Plating' },
          { label: 'Readings' },
          { label: 'Index' },
          { label: `At least, ${confidence}` },
          { label: 'Asked' },
        ],
        rows: rows.map(({ name, readings, index, bound, none }) => [
          name,
          String(readings),
          index === undefined ? none : said(index),
          said(bound),
          formatNumber(atLeast),
        ]),
      }}
    >
      <path
        className="line-grid"
        d={numberTicks(x, 6)
          .map(({ at }) => `M${at} ${TOP - 6}V${bottom}`)
          .join('')}
      />
      <path className="line-thin" d={`M${LEFT} ${bottom}H${RIGHT}`} />
      {numberTicks(x, 6).map(({ at, text }) => (
        <text key={at} x={at} y={bottom + 16} textAnchor="middle" className="text-soft text-small">
          {text}
        </text>
      ))}
      <text x={RIGHT} y={bottom + 33} textAnchor="end">
        (mean − least) ÷ 3 s
      </text>
      <UprightLimit x={x(atLeast)} top={TOP - 8} bottom={bottom} beyond="left" />
      <text x={x(atLeast) + 3} y={TOP - 14} className="text-haloed">
        at least {formatNumber(atLeast)}
      </text>
      {rows.map((row, at) => (
        <Row key={row.name} row={row} top={TOP + at * ROW} x={x} />
      ))}
      <g transform={`translate(8 ${bottom + 54})`}>
        <path className="outlined-filled ink-copper" strokeWidth="1.6" d={pointShape('ring', 5, -4, 4.5)} />
        <text x={16}>index found</text>
        <path
          className="outlined-filled ink-copper"
          strokeWidth="1.6"
          d={pointShape('square', 125, -4, 4.5)}
        />
        <text x={136}>{`at least so much, ${confidence}`}</text>
      </g>
    </Drawing>
  )
}

function Row({ row, top, x }: { row: IndexRow; top: number; x: (value: number) => number }) {
  const { name, index, bound, none } = row
  const y = top + 27
  return (
    <g>
      <text x={LEFT + 3} y={top + 13} className="text-haloed">
        {index === undefined ? `${name}: ${none}` : name}
      </text>
      {index !== undefined && bound !== undefined && (
        <g className="ink-copper">
          <path className="outlined" strokeWidth={4} d={`M${x(bound)} ${y}H${x(index)}`} />
          <path className="outlined-filled" strokeWidth="1.6" d={pointShape('square', x(bound), y, 4.5)} />
          <path className="outlined-filled" strokeWidth="1.6" d={pointShape('ring', x(index), y, 4.5)} />
        </g>
      )}
    </g>
  )
}
