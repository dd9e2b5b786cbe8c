import { scaleLinear } from 'd3-scale'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { Drawing } from './drawing'
import { UprightLimit } from './limit-line'
import { pointShape } from './point-shape'
import { numberTicks } from './ticks'

type ResidueBeforeAfterProps = {
  title: string
  /** At most, µg/cm²; undefined where none can be told. */
  limit: number | undefined
  trials: readonly { name: string; how: string; before: number; after: number; seen: string }[]
}

const WIDTH = 440
const LEFT = 12
const RIGHT = WIDTH - 20
const TOP = 38
const ROW = 44

/** Residue of each board before (ring) and after (full square) its cleaning, with the limit for what may stay. */
export function ResidueBeforeAfter({ title, limit, trials }: ResidueBeforeAfterProps) {
  const max = Math.max(limit ?? 0, ...trials.flatMap(({ before, after }) => [before, after]))
  const x = scaleLinear([0, max], [LEFT, RIGHT]).nice(5)
  const bottom = TOP + trials.length * ROW
  return (
    <Drawing
      title={title}
      description={trials
        .map(
          ({ name, before, after }) =>
            `${name}: ${formatNumber(before)} before, ${formatNumber(after)} after`,
        )
        .join('; ')}
      width={WIDTH}
      height={bottom + 40}
      numbersPlace="beside"
      numbers={{
        columns: [
          { label: 'Assembly' },
          { label: 'Cleaning', set: 'text' },
          { label: 'Before, µg/cm²' },
          { label: 'After, µg/cm²' },
          { label: 'Removed' },
          { label: 'Seen after', set: 'text' },
        ],
        rows: trials.map(({ name, how, before, after, seen }) => [
          name,
          how,
          formatNumber(before),
          formatNumber(after),
          before > 0 ? formatQuantity((1 - after / before) * 100, '%', 3) : '–',
          seen,
        ]),
      }}
    >
      <path
        className="line-grid"
        d={numberTicks(x, 5)
          .map(({ at }) => `M${at} ${TOP}V${bottom}`)
          .join('')}
      />
      {numberTicks(x, 5).map(({ at, text }) => (
        <text key={at} x={at} y={bottom + 16} textAnchor="middle" className="text-soft text-small">
          {text}
        </text>
      ))}
      <text x={RIGHT} y={bottom + 34} textAnchor="end">
        residue as sodium chloride, µg/cm²
      </text>
      {limit !== undefined && (
        <g>
          <UprightLimit x={x(limit)} top={TOP - 6} bottom={bottom} beyond="right" />
          <text x={x(limit) + 4} y={TOP - 14} className="text-haloed">
            after cleaning at most {formatNumber(limit)}
          </text>
        </g>
      )}
      {trials.map(({ name, before, after }, at) => {
        const middle = TOP + at * ROW + 30
        const [from, to] = [x(before), x(after)]
        const point = to < from ? 6 : -6
        const outside = limit !== undefined && !(after <= limit)
        return (
          <g key={`${name} ${at}`}>
            <path
              className="line-thin"
              d={`M${from} ${middle}H${to}M${to + 2 * point} ${middle - 4}l${-point} 4l${point} 4`}
            />
            <path
              className="fill-sheet ink-copper"
              stroke="currentColor"
              strokeWidth="2"
              d={pointShape('ring', from, middle, 4)}
            />
            <path
              className={outside ? 'ink-carmine fill-current' : 'ink-mask fill-current'}
              stroke="currentColor"
              d={pointShape('square', to, middle, 5)}
            />
            <text x={LEFT + 2} y={middle - 12} className="text-haloed">
              {name}
            </text>
          </g>
        )
      })}
    </Drawing>
  )
}
