import type { ReactNode } from 'react'
import { countText } from '@/app/ui/group-digits'
import { defectsToSave, type OptionCost, type OptionCostCase } from '@/shared/cost/option-cost'
import { formatQuantity } from '@/shared/quantity/format'
import type { OptionRow } from './columns'

export const money = (amount: number): string => formatQuantity(Number(amount.toFixed(2)), 'currency', 12)

/** The cost case, a row a figure. */
export function costRows(costCase: OptionCostCase): OptionRow[] {
  const { costs, boards, reworkCounted } = costCase
  const row = (key: string, head: ReactNode, cell: (cost: OptionCost) => ReactNode): OptionRow => ({
    key,
    head,
    cell: (_outcome, position) => {
      const cost = costs[position]
      return cost && cell(cost)
    },
  })
  const min = Math.min(...costs.map(({ total }) => total))
  return [
    row('board', 'Per board', ({ perBoard }) => money(perBoard)),
    row('once', 'Once', ({ once }) => money(once)),
    row('rework', 'Rework and field repair to expect, a board', (cost) => <Rework cost={cost} />),
    ...(reworkCounted ? [row('running', 'A further board in all', ({ running }) => money(running))] : []),
    row('total', `Over ${countText(boards)} boards`, ({ total }) => (
      <>
        <strong>{money(total)}</strong>
        {total === min ? ' (least)' : ` (${money(total - min)} more)`}
      </>
    )),
    row('cheapest', 'Costs least', ({ name }) => cheapestInWords(costCase, name)),
    ...(costs.every(({ rework }) => rework?.perDefect)
      ? [row('save', 'Pays for itself', (cost) => savingInWords(costCase, cost))]
      : []),
  ]
}

function Rework({ cost: { rework, missing } }: { cost: OptionCost }) {
  if (!rework) return <>cannot be said without: {missing.join('; ')}</>
  const { total, here, inService, defectsPerMillion, stated, process } = rework
  return (
    <>
      {money(total)}: {money(here)} here, {money(inService)} in service, at{' '}
      {formatQuantity(defectsPerMillion, 'per million')} joints (
      {stated ? 'as this study expects' : `as the cost table says of ${process}`})
    </>
  )
}

/** For which numbers of boards an alternative costs least. */
function cheapestInWords({ cheapest }: OptionCostCase, name: string): string {
  const position = cheapest.findIndex((entry) => entry.name === name)
  const [own, next] = [cheapest[position], cheapest[position + 1]]
  if (!own) return 'at no number of boards'
  if (position === 0) return next ? `below ${boardsText(next.from)}` : 'at any number of boards'
  return next ? `from ${boardsText(own.from)} to ${boardsText(next.from)}` : `from ${boardsText(own.from)} on`
}

const boardsText = (boards: number): string => `${countText(Math.ceil(boards))} boards`

/** How many defects a dearer alternative has to save against the one that costs least without them. */
function savingInWords({ costs, boards }: OptionCostCase, cost: OptionCost): string {
  const bare = (one: OptionCost): number => one.once + one.perBoard * boards
  const cheapest = costs.reduce((min, one) => (bare(one) < bare(min) ? one : min))
  if (bare(cost) <= bare(cheapest)) return 'costs least without rework'
  const saved = defectsToSave(cost, cheapest, boards)
  return saved === undefined
    ? '–'
    : `if it saves ${formatQuantity(saved, 'per million', 3)} joints against ${cheapest.name}`
}
