import { scaleLinear } from 'd3-scale'
import { formatQuantity } from '@/shared/quantity/format'
import { AcrossTicks } from './across-ticks'
import { Drawing } from './drawing'
import { UprightLimit } from './limit-line'
import { numberTicks } from './ticks'

interface SharesAddedUpProps {
  title: string
  note?: string
  /** What all shares together may reach. */
  maxPct: number
  /** "Capability used, %". */
  axis: string
  /** What the second column of the table says of each step. */
  messageLabel: string
  shares: readonly { name: string; pct: number; message: string }[]
}

const WIDTH = 440
const LEFT = 6
const RIGHT = WIDTH - 18
const TOP = 14
const ROW = 40

/** Shares laid end to end, each beginning where the one before ends, against what they may reach together. */
export function SharesAddedUp({ title, maxPct, axis, messageLabel, note, shares }: SharesAddedUpProps) {
  const total = shares.reduce((sum, { pct }) => sum + pct, 0)
  const x = scaleLinear([0, Math.max(maxPct, total) * 1.06], [LEFT, RIGHT])
  const bottom = TOP + shares.length * ROW + 6
  const percent = (value: number) => formatQuantity(value, '%', 3)
  const starts = shares.map((_, at) => shares.slice(0, at).reduce((sum, { pct }) => sum + pct, 0))
  return (
    <Drawing
      title={title}
      description={`${shares.map(({ name, pct }) => `${name} ${percent(pct)}`).join(', ')}; together ${percent(total)} of at most ${percent(maxPct)}.`}
      width={WIDTH}
      height={bottom + 40}
      numbersPlace="beside"
      note={note}
      numbers={{
        columns: [
          { label: 'Step' },
          { label: messageLabel, set: 'text' },
          { label: 'Share' },
          { label: 'So far' },
        ],
        rows: shares.map(({ name, pct, message }, at) => [
          name,
          message,
          percent(pct),
          percent((starts[at] ?? 0) + pct),
        ]),
      }}
    >
      {shares.map(({ name, pct }, at) => {
        const start = starts[at] ?? 0
        const y = TOP + at * ROW + 18
        return (
          <g key={at}>
            <path className="line-grid" d={`M${LEFT} ${y + 6}H${x(maxPct)}`} />
            <rect
              x={x(start)}
              y={y}
              width={Math.max(1, x(start + pct) - x(start))}
              height={12}
              className="fill-copper-bright"
            />
            <path className="line-bound" d={`M${x(start + pct)} ${y + 12}V${Math.min(y + ROW, bottom)}`} />
            <text x={LEFT} y={y - 5} className="text-haloed">
              {name}
            </text>
            <text x={x(maxPct) - 6} y={y - 5} textAnchor="end" className="text-soft text-haloed">
              {percent(pct)}
            </text>
          </g>
        )
      })}
      <UprightLimit x={x(maxPct)} top={TOP + 14} bottom={bottom} beyond="right" />
      <path className="line-thin" d={`M${LEFT} ${bottom}H${RIGHT}`} />
      <AcrossTicks ticks={numberTicks(x, 6)} bottom={bottom} />
      <text x={RIGHT} y={bottom + 34} textAnchor="end">
        {axis}
      </text>
    </Drawing>
  )
}
