import { scaleLog } from 'd3-scale'
import { formatQuantity } from '@/shared/quantity/format'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { UprightLimit } from './limit-line'
import { decadesAround } from './decade-scale'
import { logTicks } from './log-ticks'
import { pointShape } from './point-shape'

export interface RateOnScale {
  readonly name: string
  /** Drawn hollow when only assumed. */
  readonly assumed: boolean
  readonly rate: number
  readonly lower: number | undefined
  readonly upper: number
  readonly status: string
}

const WIDTH = 900
const ROW = 44

/** Failure rates on one logarithmic scale, each with its bounds, against the rate allowed. */
export function RatesOnScale({
  title,
  rates,
  allowed,
}: {
  title: string
  rates: readonly RateOnScale[]
  allowed: number
}) {
  const height = 76 + rates.length * ROW
  const frame = frameOf(WIDTH, height, { left: 150, right: 30, top: 26 })
  const [min, max] = decadesAround([
    allowed / 3,
    allowed * 3,
    ...rates.flatMap(({ rate, lower, upper }) => [rate, lower ?? 0, upper]),
  ])
  const x = scaleLog([min, max], [frame.left, frame.right]).clamp(true)
  const fit = (rate: number): string => formatQuantity(rate, 'FIT', 3)
  return (
    <Drawing
      title={title}
      description={`${rates.map(({ name, upper, status }) => `${name}: at most ${fit(upper)}, ${status}`).join('; ')}. Allowed: ${fit(allowed)} a board.`}
      width={WIDTH}
      height={height}
      size="wide"
      numbersPlace="below"
      numbers={{
        columns: [
          { label: 'From' },
          { label: 'Basis', set: 'text' },
          { label: 'Rate' },
          { label: 'At least' },
          { label: 'At most' },
          { label: 'Against the target', set: 'text' },
        ],
        rows: rates.map(({ name, assumed, rate, lower, upper, status }) => [
          name,
          assumed ? 'assumed' : 'shown',
          fit(rate),
          lower === undefined ? '–' : fit(lower),
          fit(upper),
          status,
        ]),
      }}
      note="Hollow and dashed: assumed from a model. Filled, with bounds: shown by joints of this programme."
    >
      <Axes
        frame={frame}
        across={{ title: 'Failure rate of a board, FIT, logarithmic', ticks: logTicks(min, max, x) }}
      />
      <UprightLimit x={x(allowed)} top={frame.top} bottom={frame.bottom} beyond="right" />
      <text x={x(allowed) - 6} y={frame.top - 8} textAnchor="end">
        allowed {fit(allowed)}
      </text>
      {rates.map(({ name, assumed, rate, lower, upper }, position) => {
        const y = frame.top + 24 + position * ROW
        const from = x(Math.max(min, lower ?? rate))
        return (
          <g key={name}>
            <text x={frame.left - 12} y={y + 4} textAnchor="end" className="text-strong">
              {name}
            </text>
            {assumed ? (
              <path className="line-bound" d={`M${frame.left} ${y}H${x(rate)}`} />
            ) : (
              <g className="ink-copper">
                <path className="line-data outlined" d={`M${from} ${y}H${x(upper)}`} />
                {lower !== undefined && lower > 0 && (
                  <path className="line-data outlined" d={`M${from} ${y - 7}v14`} />
                )}
                <path className="line-data outlined" d={`M${x(upper)} ${y - 7}v14`} />
              </g>
            )}
            {rate > 0 && (
              <path
                className={assumed ? 'fill-sheet' : 'fill-ink'}
                stroke="var(--color-ink)"
                strokeWidth="1.4"
                d={pointShape(assumed ? 'ring' : 'diamond', x(rate), y, 5)}
              />
            )}
          </g>
        )
      })}
    </Drawing>
  )
}
