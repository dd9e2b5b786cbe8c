import { scaleLog, scaleUtc } from 'd3-scale'
import { area, line } from 'd3-shape'
import { Day } from '@/app/ui/date'
import { instantOf, MS_PER_DAY } from '@/shared/quantity/calendar'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { LevelLimit } from './limit-line'
import { decadesAround } from './decade-scale'
import { logTicks } from './log-ticks'
import { pointShape } from './point-shape'
import { timeTicks } from './ticks'

interface RateOverTimeProps {
  title: string
  /** In order of date; rates in FIT a board. */
  points: readonly {
    on: string
    boardHours: number
    failed: number
    rate: number
    lower: number
    upper: number
  }[]
  allowed: number
  confidencePct: number
}

const WIDTH = 900
const HEIGHT = 280

/** What service has shown of a failure rate, month by month, between its bounds and against the budget. */
export function RateOverTime({ title, points, allowed, confidencePct }: RateOverTimeProps) {
  const frame = frameOf(WIDTH, HEIGHT, { left: 62, right: 130 })
  const [min, max] = decadesAround([
    allowed / 2,
    allowed * 2,
    ...points.flatMap(({ lower, rate, upper }) => [lower, rate, upper]),
  ])
  const moments = points.map(({ on }) => instantOf(on))
  const [first = 0, last = 1] = [moments[0], moments.at(-1)]
  const x = scaleUtc([first - 5 * MS_PER_DAY, last + 5 * MS_PER_DAY], [frame.left, frame.right])
  const y = scaleLog([min, max], [frame.bottom, frame.top]).clamp(true)
  type P = (typeof points)[number] & { at: number }
  const placed: P[] = points.map((point, position) => ({ ...point, at: x(moments[position] ?? 0) }))
  const level = (rate: number): number => y(Math.max(min, rate))
  const band = area<P>(
    ({ at }) => at,
    ({ lower }) => level(lower),
    ({ upper }) => level(upper),
  )
  const edge = (of: (point: P) => number) =>
    line<P>(
      ({ at }) => at,
      (point) => level(of(point)),
    )(placed) ?? ''
  const fit = (rate: number): string => formatQuantity(rate, 'FIT', 3)
  const end = placed.at(-1)
  return (
    <Drawing
      title={title}
      description={`${points.length} periods of service; at the end ${end?.failed ?? 0} boards failed at a joint, at most ${fit(end?.upper ?? 0)}. The budget is ${fit(allowed)} a board.`}
      width={WIDTH}
      height={HEIGHT}
      size="wide"
      numbersPlace="below"
      numbers={{
        columns: [
          { label: 'By the end of' },
          { label: 'Board-hours' },
          { label: 'Failed at a joint' },
          { label: 'Rate' },
          { label: `At least (${confidencePct} %)` },
          { label: `At most (${confidencePct} %)` },
        ],
        rows: points.map(({ on, boardHours, failed, rate, lower, upper }) => [
          <Day key={on} at={on} />,
          formatNumber(boardHours, 7),
          String(failed),
          fit(rate),
          fit(lower),
          fit(upper),
        ]),
      }}
      note="Dashed: one-sided bounds. Rings: the rate itself, once something has failed. A bound below the budget shows it; a lower bound above it contradicts it."
    >
      <path className="fill-copper-wash" d={band(placed) ?? ''} />
      <Axes
        frame={frame}
        across={{ title: 'End of the period', ticks: timeTicks(x, 8), grid: false }}
        up={{ title: 'Failure rate of a board, FIT, logarithmic', ticks: logTicks(min, max, y) }}
      />
      <path className="line-bound" d={edge(({ upper }) => upper)} />
      {placed.map(({ on, at, upper }) => (
        <path key={on} className="line-seen" d={`M${at - 5} ${level(upper)}h10`} />
      ))}
      {placed.some(({ lower }) => lower > 0) && (
        <path className="line-bound" d={edge(({ lower }) => lower)} />
      )}
      {placed
        .filter(({ rate }) => rate > 0)
        .map(({ on, at, rate }) => (
          <path
            key={on}
            className="fill-sheet"
            stroke="var(--color-ink)"
            strokeWidth="1.4"
            d={pointShape('ring', at, level(rate), 4)}
          />
        ))}
      <LevelLimit y={y(allowed)} left={frame.left} right={frame.right} beyond="above" />
      <text x={frame.right + 8} y={y(allowed) + 4}>
        budget {fit(allowed)}
      </text>
      {end && (
        <text x={frame.right + 8} y={level(end.upper) + 4}>
          at most {fit(end.upper)}
        </text>
      )}
    </Drawing>
  )
}
