import { scaleLinear } from 'd3-scale'
import { formatNumber } from '@/shared/quantity/format'
import type { Interval } from '@/shared/statistics/intervals/interval'
import { Drawing } from './drawing'
import { pointShape } from './point-shape'
import { numberTicks } from './ticks'

type AgreementIntervalsProps = {
  title: string
  rows: readonly { name: string; kappa: number; interval: Interval | undefined }[]
}

const WIDTH = 440
const LEFT = 10
const RIGHT = WIDTH - 40
const TOP = 12
const ROW = 36

/** Kappa of each pair with its interval, between chance (0) and full agreement (1). */
export function AgreementIntervals({ title, rows }: AgreementIntervalsProps) {
  const min = Math.min(0, ...rows.map(({ kappa, interval }) => interval?.lower ?? kappa))
  const x = scaleLinear([min, 1], [LEFT, RIGHT])
  const bottom = TOP + rows.length * ROW + 4
  return (
    <Drawing
      title={title}
      description={rows.map(({ name, kappa }) => `${name}: ${formatNumber(kappa, 3)}`).join('; ')}
      width={WIDTH}
      height={bottom + 24}
      numbers={{
        columns: [{ label: 'Between' }, { label: 'Kappa' }, { label: 'At least' }, { label: 'At most' }],
        rows: rows.map(({ name, kappa, interval }) => [
          name,
          formatNumber(kappa, 3),
          interval ? formatNumber(interval.lower, 3) : '–',
          interval ? formatNumber(interval.upper, 3) : '–',
        ]),
      }}
    >
      <path
        className="line-grid"
        d={numberTicks(x, 5)
          .map(({ at }) => `M${at} ${TOP}V${bottom}`)
          .join('')}
      />
      <path className="line-thin" d={`M${x(0)} ${TOP}V${bottom}`} />
      <path className="line-bound" d={`M${x(1)} ${TOP}V${bottom}`} />
      {numberTicks(x, 5).map(({ at, text }) => (
        <text key={at} x={at} y={bottom + 16} textAnchor="middle" className="text-soft text-small">
          {text}
        </text>
      ))}
      {rows.map(({ name, kappa, interval }, position) => {
        const middle = TOP + position * ROW + 26
        return (
          <g key={name}>
            {interval && (
              <path
                className="line-thin"
                d={`M${x(interval.lower)} ${middle}H${x(interval.upper)}M${x(interval.lower)} ${middle - 4}v8M${x(interval.upper)} ${middle - 4}v8`}
              />
            )}
            <path
              className="fill-sheet ink-copper"
              stroke="currentColor"
              strokeWidth="2"
              d={pointShape('ring', x(kappa), middle, 4)}
            />
            <text x={LEFT + 2} y={middle - 10} className="text-haloed">
              {name} <tspan className="text-strong">{formatNumber(kappa, 3)}</tspan>
            </text>
          </g>
        )
      })}
    </Drawing>
  )
}
