import type { ReactNode } from 'react'
import { works } from '@/lib/settings/works'
import { countText } from '@/shared/quantity/digits-in-threes'
import { isKnown, isNothing, lessAmount, type Amount } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import { amountIn, COST_KIND_FACTS, COST_KINDS, PER_IN_WORDS, type CostKind } from '@/shared/cost/cost-line'
import type { CostGap } from '@/shared/cost/drawn-costs'
import { bareCost, defectsToSave, type OptionCost, type OptionCostCase } from '@/shared/cost/option-cost'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { OptionRow } from './columns'

const figure = (amount: number): string =>
  [formatNumber(Number(amount.toFixed(2)), 12), works().currency].filter(Boolean).join(' ')

/** "12", "12 to 15", or "not known" */
export function money(amount: Amount): string {
  if (!isKnown(amount)) return 'not known'
  return amount.from === amount.to ? figure(amount.from) : `${figure(amount.from)} to ${figure(amount.to)}`
}

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
  const kinds = COST_KINDS.filter((kind) =>
    costs.some(({ lines }) => lines.some((line) => line.kind === kind)),
  )
  return [
    ...kinds.map((kind) =>
      row(`kind ${kind}`, COST_KIND_FACTS[kind].label, (cost) => <Lines cost={cost} kind={kind} />),
    ),
    row('board', 'Per board', ({ perBoard }) => money(perBoard)),
    row('once', 'Once', ({ once }) => money(once)),
    row('rework', 'Rework and field repair to expect, a board', (cost) => <Rework cost={cost} />),
    ...(reworkCounted ? [row('running', 'A further board in all', ({ running }) => money(running))] : []),
    row('total', `Over ${countText(boards)} boards`, (cost) => <Total costCase={costCase} cost={cost} />),
    ...(costs.some(({ gaps }) => gaps.length > 0)
      ? [row('gaps', 'Not known', ({ gaps }) => gaps.map(gapInWords).join('; ') || 'nothing')]
      : []),
    row('cheapest', 'Costs least', ({ name }) => cheapestInWords(costCase, name)),
    ...(costs.every(({ rework }) => rework && !isNothing(rework.perDefect))
      ? [row('save', 'Pays for itself', (cost) => savingInWords(costCase, cost))]
      : []),
  ]
}

/** The amounts of one kind, each with who named it. */
function Lines({ cost: { lines }, kind }: { cost: OptionCost; kind: CostKind }) {
  const own = lines.filter((line) => line.kind === kind)
  if (own.length === 0) return <>not named</>
  return (
    <ul className="option-differences">
      {own.map((line, position) => (
        <li key={position}>
          {kind === 'lead time' ? daysText(amountIn(line)) : money(amountIn(line))}
          {line.per && line.amount !== null && ` ${PER_IN_WORDS[line.per]}`},{' '}
          {line.action === null ? 'own figure' : `action ${line.action}`}
        </li>
      ))}
    </ul>
  )
}

function daysText(amount: Amount): string {
  if (!isKnown(amount)) return 'not known'
  const to = formatQuantity(amount.to, 'days', 6)
  return amount.from === amount.to ? to : `${amount.from} to ${to}`
}

function Total({ costCase, cost }: { costCase: OptionCostCase; cost: OptionCost }) {
  const { least, costs, reworkCounted } = costCase
  const { total, known, name } = cost
  if (!isKnown(total))
    return (
      <>
        <strong>not known</strong> (what is named comes to {money(known)})
      </>
    )
  const cheapest = costs.find((other) => other.name === least)
  const more = cheapest && money(lessAmount(total, cheapest.total))
  const beside = reworkCounted ? '' : ', rework left out'
  return (
    <>
      <strong>{money(total)}</strong>
      {name === least && ` (least${beside})`}
      {more !== undefined && name !== least && ` (${more} more)`}
    </>
  )
}

/** What keeps a sum from being known. */
export function gapInWords(gap: CostGap): string {
  switch (gap.kind) {
    case 'unanswered':
      return `action ${gap.action} waits for its answer`
    case 'not known':
      return `${COST_KIND_FACTS[gap.cost].label.toLowerCase()}, ${gap.action === null ? 'by the study itself' : `by action ${gap.action}`}`
    case 'not named':
      return `${COST_KIND_FACTS[gap.cost].label.toLowerCase()}: another alternative has one; 0 has to be said`
    case 'nothing named':
      return 'no cost is named'
  }
}

function Rework({ cost: { rework, missing } }: { cost: OptionCost }) {
  if (!rework) return <>cannot be said without: {missing.join('; ')}</>
  const { total, here, inService, defectsPerMillion, stated, process, open } = rework
  if (!isKnown(total))
    return (
      <>
        not known: the cost table leaves open of {process}: {open.join(', ')}
      </>
    )
  return (
    <>
      {money(total)}: {money(here)} here, {money(inService)} in service, at {amountInWords(defectsPerMillion)}{' '}
      per million joints ({stated ? 'as this study expects' : `as the cost table says of ${process}`})
    </>
  )
}

/** For which numbers of boards an alternative costs least; of ranges, only whether it surely does over these boards. */
function cheapestInWords({ cheapest, least, costs }: OptionCostCase, name: string): string {
  if (!cheapest) {
    if (least !== undefined)
      return name === least ? 'over these boards, whatever the ranges' : 'not over these boards'
    return costs.some(({ total }) => !isKnown(total))
      ? 'cannot be said: a figure is missing'
      : 'cannot be said: the ranges overlap'
  }
  const position = cheapest.findIndex((entry) => entry.name === name)
  const [own, next] = [cheapest[position], cheapest[position + 1]]
  if (!own) return 'at no number of boards'
  if (position === 0) return next ? `below ${boardsText(next.from)}` : 'at any number of boards'
  return next ? `from ${boardsText(own.from)} to ${boardsText(next.from)}` : `from ${boardsText(own.from)} on`
}

const boardsText = (boards: number): string => `${countText(Math.ceil(boards))} boards`

/** How many defects a dearer alternative has to save against the one that costs least without them. */
function savingInWords({ costs, boards }: OptionCostCase, cost: OptionCost): string {
  const bare = costs.map((one) => ({ one, sum: bareCost(one, boards) }))
  const own = bareCost(cost, boards)
  if (own === undefined || bare.some(({ sum }) => sum === undefined)) return 'cannot be said yet'
  const cheapest = bare.reduce((min, next) => ((next.sum ?? 0) < (min.sum ?? 0) ? next : min))
  if (own <= (cheapest.sum ?? 0)) return 'costs least without rework'
  const saved = defectsToSave(cost, cheapest.one, boards)
  return saved === undefined
    ? '–'
    : `if it saves ${formatQuantity(saved, 'per million', 3)} joints against ${cheapest.one.name}`
}
