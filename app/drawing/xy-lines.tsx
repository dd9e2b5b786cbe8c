import { scaleLinear } from 'd3-scale'
import { area, line } from 'd3-shape'
import { formatQuantity } from '@/shared/quantity/format'
import { printedUnit, type Unit } from '@/shared/quantity/unit'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { LevelLimit } from './limit-line'
import { spreadLabels } from './spread-labels'
import { axisTitle, numberTicks } from './ticks'

/** One line: its points in order of x, and how far it may lie off either way. */
export type Series = {
  name: string
  points: readonly { x: number; y: number; min?: number; max?: number }[]
}

type XyLinesProps = {
  title: string
  description: string
  across: { label: string; unit: Unit }
  up: { label: string; unit: Unit }
  series: readonly Series[]
  /** A limit across, toothed on the side that is not allowed. */
  limit?: { y: number; name: string; beyond: 'above' | 'below' }
  /** A moment or value to read off, drawn upright. */
  upright?: { x: number; name: string }
}

const WIDTH = 440
const HEIGHT = 280
const DASHES = [undefined, '7 3', '2.5 2.5', '9 2.5 2 2.5', '14 4', '4 2 1 2 1 2']

/** Lines of one family, told apart by dash and by name at their ends, with a band where the value is uncertain. */
export function XyLines({ title, description, across, up, series, limit, upright }: XyLinesProps) {
  const frame = frameOf(WIDTH, HEIGHT, { right: 74 })
  const points = series.flatMap((one) => one.points)
  const heights = [...points.flatMap(({ y, min, max }) => [y, min ?? y, max ?? y]), limit?.y ?? 0]
  const x = scaleLinear(spanOf(points.map((point) => point.x)), [frame.left, frame.right])
  const y = scaleLinear(spanOf([0, ...heights]), [frame.bottom, frame.top]).nice(5)
  const ends = spreadLabels(
    series.map((one) => y(one.points.at(-1)?.y ?? 0)),
    15,
    frame.top,
    frame.bottom,
  )
  type P = Series['points'][number]
  const lineOf = line<P>(
    (point) => x(point.x),
    (point) => y(point.y),
  )
  const bandOf = area<P>(
    (point) => x(point.x),
    (point) => y(point.min ?? point.y),
    (point) => y(point.max ?? point.y),
  )
  return (
    <Drawing
      title={title}
      description={description}
      width={WIDTH}
      height={HEIGHT}
      numbers={{
        columns: [
          { label: 'Line' },
          { label: across.label },
          { label: up.label },
          { label: 'Least' },
          { label: 'Most' },
        ],
        rows: series.flatMap((one) =>
          thinned(one.points).map((point) => [
            one.name,
            formatQuantity(point.x, across.unit, 3),
            formatQuantity(point.y, up.unit, 3),
            point.min === undefined ? '–' : formatQuantity(point.min, up.unit, 3),
            point.max === undefined ? '–' : formatQuantity(point.max, up.unit, 3),
          ]),
        ),
      }}
    >
      <Axes
        frame={frame}
        across={{ title: axisTitle(across.label, printedUnit(across.unit)), ticks: numberTicks(x, 6) }}
        up={{ title: axisTitle(up.label, printedUnit(up.unit)), ticks: numberTicks(y, 5) }}
      />
      {series
        .filter((one) => one.points.some(({ min }) => min !== undefined))
        .map((one) => (
          <path
            key={one.name}
            className="fill-copper-wash"
            fillOpacity="0.8"
            d={bandOf([...one.points]) ?? ''}
          />
        ))}
      {series.map((one, at) => (
        <g key={one.name}>
          <path
            className="line-data outlined ink-copper"
            strokeDasharray={DASHES[at % DASHES.length]}
            d={lineOf([...one.points]) ?? ''}
          />
          <path
            className="line-thin"
            d={`M${frame.right + 1} ${y(one.points.at(-1)?.y ?? 0)}L${frame.right + 8} ${ends[at]}`}
          />
          <text x={frame.right + 11} y={ends[at]! + 4}>
            {one.name}
          </text>
        </g>
      ))}
      {limit && (
        <g>
          <LevelLimit y={y(limit.y)} left={frame.left} right={frame.right} beyond={limit.beyond} />
          <text
            x={frame.left + 6}
            y={y(limit.y) + (limit.beyond === 'below' ? 20 : -11)}
            className="text-haloed"
          >
            {limit.name}
          </text>
        </g>
      )}
      {upright && (
        <g>
          <path className="line-chain" d={`M${x(upright.x)} ${frame.top}V${frame.bottom}`} />
          <text x={x(upright.x) + 4} y={frame.top + 11} className="text-haloed">
            {upright.name}
          </text>
        </g>
      )}
    </Drawing>
  )
}

const spanOf = (values: readonly number[]): [number, number] => [Math.min(...values), Math.max(...values)]

/** At most seven points of a line, ends included, for the table. */
function thinned<T>(points: readonly T[]): readonly T[] {
  const step = Math.max(1, Math.ceil((points.length - 1) / 6))
  return points.filter((_, at) => at % step === 0 || at === points.length - 1)
}
