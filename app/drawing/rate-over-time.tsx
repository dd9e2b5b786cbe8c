import { scaleLog, scaleUtc } from 'd3-scale'
import { Day } from '@/app/ui/date'
import { instantOf, MS_PER_DAY } from '@/shared/quantity/calendar'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { LevelLimit } from './limit-line'
import { decadesAround } from './decade-scale'
import { logTicks } from './log-ticks'
import { BandLayer, EndNames, LineLayer, RingsLayer } from './plot-layers'
import { roomForText } from './room-for-text'
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
  const [min, max] = decadesAround([
    allowed / 2,
    allowed * 2,
    ...points.flatMap(({ lower, rate, upper }) => [lower, rate, upper]),
  ])
  const fit = (rate: number): string => formatQuantity(rate, 'FIT', 3)
  const end = points.at(-1)
  const names = { budget: `budget ${fit(allowed)}`, atMost: end ? `at most ${fit(end.upper)}` : '' }
  const { top, bottom } = frameOf(WIDTH, HEIGHT)
  const y = scaleLog([min, max], [bottom, top]).clamp(true)
  const upTicks = logTicks(min, max, y)
  const frame = frameOf(WIDTH, HEIGHT, {
    left: Math.max(
      62,
      roomForText(
        upTicks.map(({ text }) => text),
        'wide',
      ) + 10,
    ),
    right: Math.max(130, roomForText(Object.values(names), 'wide') + 10),
  })
  const moments = points.map(({ on }) => instantOf(on))
  const [first = 0, last = 1] = [moments[0], moments.at(-1)]
  const x = scaleUtc([first - 5 * MS_PER_DAY, last + 5 * MS_PER_DAY], [frame.left, frame.right])
  const placed = points.map((point, position) => ({ ...point, at: moments[position] ?? 0 }))
  const level = (rate: number): number => y(Math.max(min, rate))
  const place = { frame, x, y: level }
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
      <BandLayer place={place} points={placed.map(({ at, lower, upper }) => [at, lower, upper])} />
      <Axes
        frame={frame}
        across={{ title: 'End of the period', ticks: timeTicks(x, 8), grid: false }}
        up={{ title: 'Failure rate of a board, FIT, logarithmic', ticks: upTicks }}
      />
      <LineLayer place={place} ink="line-bound" points={placed.map(({ at, upper }) => [at, upper])} />
      {placed.map(({ on, at, upper }) => (
        <path key={on} className="line-seen" d={`M${x(at) - 5} ${level(upper)}h10`} />
      ))}
      {placed.some(({ lower }) => lower > 0) && (
        <LineLayer place={place} ink="line-bound" points={placed.map(({ at, lower }) => [at, lower])} />
      )}
      <RingsLayer
        place={place}
        points={placed.filter(({ rate }) => rate > 0).map(({ at, rate }) => [at, rate])}
      />
      <LevelLimit y={y(allowed)} left={frame.left} right={frame.right} beyond="above" />
      <EndNames
        frame={frame}
        ends={[
          { name: names.budget, height: y(allowed) },
          ...(end ? [{ name: names.atMost, height: level(end.upper) }] : []),
        ]}
      />
    </Drawing>
  )
}
