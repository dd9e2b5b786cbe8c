import { priced } from '@/app/ui/priced'
import { scaleLinear } from 'd3-scale'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { Drawing } from './drawing'
import { hatchRectangle } from './hatch-rectangle'

interface CostClassesProps {
  title: string
  /** In the order they are told; `failure` is drawn in full, what is spent against it hatched. */
  classes: readonly { name: string; amount: number; share: number; failure: boolean }[]
}

const WIDTH = 440
const LEFT = 6
const RIGHT = WIDTH - 6
const ROW = 40
const TOP = 4

/** Money by class of quality cost: what prevents and appraises hatched, what failure cost in full. */
export function CostClasses({ title, classes }: CostClassesProps) {
  const max = Math.max(1e-9, ...classes.map(({ amount }) => amount))
  const x = scaleLinear([0, max], [LEFT, RIGHT])
  const height = TOP + classes.length * ROW + 4
  return (
    <Drawing
      title={title}
      description={classes
        .map(
          ({ name, amount, share }) =>
            `${name}: ${formatNumber(amount)}, ${formatQuantity(share * 100, '%', 3)}`,
        )
        .join('; ')}
      width={WIDTH}
      height={height}
      numbersPlace="beside"
      numbers={{
        columns: [{ label: 'Class' }, { label: priced('Amount') }, { label: 'Share' }],
        rows: classes.map(({ name, amount, share }) => [
          name,
          formatNumber(amount),
          formatQuantity(share * 100, '%', 3),
        ]),
      }}
      note="Hatched: spent so that nothing fails. Full: spent because something failed."
    >
      <path className="line-thin" d={`M${LEFT} ${TOP}V${height}`} />
      {classes.map(({ name, amount, failure }, position) => {
        const y = TOP + position * ROW + 18
        const width = x(amount) - LEFT
        return (
          <g key={name}>
            {failure ? (
              <path className="ink-copper fill-current" d={`M${LEFT} ${y}h${width}v14h${-width}Z`} />
            ) : (
              <>
                <path className="fill-copper-wash" d={`M${LEFT} ${y}h${width}v14h${-width}Z`} />
                <path
                  className="ink-copper outlined"
                  strokeWidth="0.9"
                  d={hatchRectangle(LEFT, y, width, 14, 5)}
                />
              </>
            )}
            <path className="line-thin" d={`M${LEFT} ${y}h${width}v14h${-width}`} />
            <text x={LEFT + 4} y={y - 4} className="text-haloed">
              {name} <tspan className="text-strong">{formatNumber(amount)}</tspan>
            </text>
          </g>
        )
      })}
    </Drawing>
  )
}
