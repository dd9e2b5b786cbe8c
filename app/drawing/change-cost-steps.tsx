import { priced } from '@/app/ui/priced'
import { scaleLinear, scaleUtc } from 'd3-scale'
import { Day } from '@/app/ui/date'
import { instantOf } from '@/shared/quantity/calendar'
import { isExact, NO_AMOUNT, type KnownAmount } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import { Axes } from './axes'
import { Drawing } from './drawing'
import { frameOf } from './frame'
import { pointShape } from './point-shape'
import { numberTicks, timeTicks } from './ticks'

interface ChangeCostStepsProps {
  title: string
  /** In order of date; the cost holds from each to the next. */
  steps: readonly { on: string; made: number; serving: number; cost: KnownAmount }[]
  /** Gates signed, drawn upright. */
  gates: readonly { on: string; name: string }[]
  /** Changes made late, marked on the line. */
  changes: readonly { on: string; name: string; cost: KnownAmount }[]
}

const WIDTH = 900
const HEIGHT = 300

/** What one change would cost, day by day: the steps are boards made and boards gone into service. Of ranges both ends are drawn. */
export function ChangeCostSteps({ title, steps, gates, changes }: ChangeCostStepsProps) {
  const frame = frameOf(WIDTH, HEIGHT, { left: 62, right: 20, top: 46 })
  const x = scaleUtc(
    [instantOf(steps[0]?.on ?? '2000-01-01'), instantOf(steps.at(-1)?.on ?? '2000-01-02')],
    [frame.left, frame.right],
  )
  const y = scaleLinear(
    [0, Math.max(1, ...steps.map(({ cost }) => cost.to))],
    [frame.bottom, frame.top],
  ).nice(5)
  const pathAt = (end: keyof KnownAmount): string =>
    steps
      .map(({ on, cost }, at) => {
        const place = x(instantOf(on))
        return at === 0 ? `M${place} ${y(cost[end])}` : `H${place}V${y(cost[end])}`
      })
      .join('')
  const path = pathAt('to')
  const isRange = !steps.every(({ cost }) => isExact(cost))
  return (
    <Drawing
      title={title}
      description={`From ${amountInWords(steps[0]?.cost ?? NO_AMOUNT)} at first to ${amountInWords(steps.at(-1)?.cost ?? NO_AMOUNT)} at last; ${gates.map(({ on, name }) => `${name} gate ${on}`).join(', ')}.`}
      width={WIDTH}
      height={HEIGHT}
      size="wide"
      numbers={{
        columns: [
          { label: 'From' },
          { label: 'Boards made' },
          { label: 'In service' },
          { label: priced('Cost of a change') },
        ],
        rows: steps.map(({ on, made, serving, cost }) => [
          <Day key={on} at={on} />,
          String(made),
          String(serving),
          amountInWords(cost),
        ]),
      }}
      note={`A dashed upright is a gate, when it was first signed. The line rises with every board soldered, and once more with every board that goes into service.${isRange ? ' The thin line is the least that a change costs, the heavy one the most.' : ''}`}
    >
      <path className="fill-copper-wash" d={`${path}V${frame.bottom}H${frame.left}Z`} />
      <Axes
        frame={frame}
        across={{ title: 'Date', ticks: timeTicks(x, 8), grid: false }}
        up={{ title: priced('Cost of changing one joint of every board'), ticks: numberTicks(y, 5) }}
      />
      <path className="line-data outlined ink-copper" d={path} />
      {isRange && <path className="line-bound" d={pathAt('from')} />}
      {gates.map(({ on, name }, position) => {
        const at = x(instantOf(on))
        const leftward = at > frame.right - 90
        return (
          <g key={name}>
            <path className="line-bound" d={`M${at} ${frame.top - 4}V${frame.bottom}`} />
            <text
              x={leftward ? at - 4 : at + 4}
              y={frame.top + 10 + (position % 4) * 17}
              textAnchor={leftward ? 'end' : 'start'}
              className="text-haloed text-small"
            >
              {name}
            </text>
          </g>
        )
      })}
      {changes.map(({ on, name, cost }, position) => (
        <path
          key={`${position} ${name}`}
          className="fill-sheet"
          stroke="var(--color-ink)"
          strokeWidth="1.4"
          d={pointShape('diamond', x(instantOf(on)), y(cost.to), 5)}
        />
      ))}
    </Drawing>
  )
}
