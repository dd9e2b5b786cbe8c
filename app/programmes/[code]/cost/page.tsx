import { priced } from '@/app/ui/priced'
import { TakeTable } from '@/app/ui/take-table'
import { costAddress, tableAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { lateRevisions } from '@/lib/queries/late-revisions'
import { readMoneyCeiling } from '@/lib/queries/money-ceiling'
import { readOptionStudies } from '@/lib/queries/option-studies'
import { ceilingStanding } from '@/shared/cost/money-ceiling'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { Ceiling } from './ceiling'
import { isKnown } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import type { QualityCostSummary } from '@/shared/cost/quality-cost-summary'
import { ByClass } from './by-class'
import { ByDecision } from './by-decision'
import { costsOf } from './costs'
import { WhenCheaper } from './when-cheaper'

export const generateMetadata = programmeTitle(({ code }) => `Cost, ${code}`)

/** What quality costs and what failure cost, by class and by decision, and when a change is cheap. */
export default programmePage(async ({ visit }) => {
  const { view } = visit
  const code = view.code
  const { id } = view.state.programme
  const [studies, revisions, ceiling] = await Promise.all([
    readOptionStudies(id),
    lateRevisions(id),
    readMoneyCeiling(id),
  ])
  const costs = costsOf(view, { studies, revisions })
  const standing =
    ceiling && ceiling.amount !== null && ceiling.boards !== null
      ? ceilingStanding(
          { actions: view.state.actions, studies },
          { amount: ceiling.amount, boards: ceiling.boards, lots: ceiling.lots },
          view.state.facts.values,
        )
      : undefined
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={costAddress(code)}
      place={[{ text: 'Cost' }]}
      title="Cost"
      supplement="What was spent so that joints hold, what failure cost, and what each decision is worth; one currency throughout"
      cells={[
        { label: priced('Spent in all'), value: spentInWords(costs.summary) },
        {
          label: 'Of it on failure',
          value: isKnown(costs.summary.sum)
            ? formatQuantity(costs.summary.failureShare * 100, '%', 3)
            : amountInWords('unknown'),
        },
        { label: 'Boards made', value: costs.boards },
        {
          label: priced('Per board'),
          value:
            costs.boards > 0
              ? `${isKnown(costs.summary.sum) ? '' : 'at least '}${formatNumber(costs.summary.total / costs.boards)}`
              : 'none made yet',
        },
      ]}
    >
      {(readable) => (
        <>
          <Ceiling view={readable} ceiling={ceiling} standing={standing} />
          <ByClass costs={costs} code={readable.code} />
          <ByDecision costs={costs} code={readable.code} />
          <TakeTable address={tableAddress(readable.code, 'costs')} what="Amounts answered" />
          <WhenCheaper costs={costs} code={readable.code} />
        </>
      )}
    </ProgrammeSheet>
  )
})

/** The sum where all of it has a price; else the least it can be, and what has none. */
function spentInWords({ sum, total, unpriced: { rework, returns } }: QualityCostSummary): string {
  if (isKnown(sum)) return formatNumber(total)
  const without = [
    rework > 0 && `${rework} rework${rework === 1 ? '' : 's'}`,
    returns > 0 && `${returns} return${returns === 1 ? '' : 's'}`,
  ].filter(Boolean)
  return `at least ${formatNumber(total)}; ${without.join(' and ')} without a price`
}
