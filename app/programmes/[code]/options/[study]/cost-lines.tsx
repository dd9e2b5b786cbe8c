import { priced } from '@/app/ui/priced'
import { XyLines } from '@/app/drawing/xy-lines'
import { isKnown, type Amount } from '@/shared/cost/amount'
import type { OptionCostCase } from '@/shared/cost/option-cost'
import { letterOf } from '@/shared/gate/option-letter'

const POINTS = 12

/** Cost over the number of boards, a line an alternative; where lines cross, another costs least. */
export function CostLines({
  costCase: { costs, boards, cheapest, reworkCounted },
}: {
  costCase: OptionCostCase
}) {
  if (!cheapest)
    return (
      <p className="field-hint">
        Lines over the number of boards are drawn once every figure is known to the point.
      </p>
    )
  const lastCrossing = Math.max(...cheapest.map(({ from }) => from))
  const max = Math.max(2 * boards, lastCrossing <= 10 * boards ? 1.25 * lastCrossing : 0)
  return (
    <XyLines
      title="Cost over the number of boards"
      description={`Cost of each alternative from no board to ${Math.round(max)} boards${reworkCounted ? ', rework and field repair included' : ''}; the upright line is the number calculated with.`}
      across={{ label: 'Boards', unit: '1' }}
      up={{ label: priced('Cost'), unit: 'currency' }}
      series={costs.map(({ once, running }, position) => ({
        name: letterOf(position),
        points: Array.from({ length: POINTS + 1 }, (_, step) => {
          const x = (max * step) / POINTS
          return { x, y: highest(once) + highest(running) * x }
        }),
      }))}
      upright={{ x: boards, name: `${Math.round(boards)} boards` }}
    />
  )
}

/** Every figure drawn is exact, so that its ends are one. */
const highest = (amount: Amount): number => (isKnown(amount) ? amount.to : 0)
