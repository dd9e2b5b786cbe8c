import { costAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { lateRevisions } from '@/lib/queries/late-revisions'
import { readMoneyCeiling } from '@/lib/queries/money-ceiling'
import { readOptionStudies } from '@/lib/queries/option-studies'
import { ceilingStanding } from '@/shared/cost/money-ceiling'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import { Ceiling } from './ceiling'
import { ByClass } from './by-class'
import { ByDecision } from './by-decision'
import { costsOf } from './costs'
import { WhenCheaper } from './when-cheaper'

interface CostPageProps {
  params: Promise<{ code: string }>
}

/** What quality costs and what failure cost, by class and by decision, and when a change is cheap. */
export default async function CostPage({ params }: CostPageProps) {
  const { code: asked } = await params
  const visit = await visitProgramme(asked)
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
        { label: 'Spent in all', value: formatNumber(costs.summary.total) },
        {
          label: 'Of it on failure',
          value: formatQuantity(costs.summary.failureShare * 100, '%', 3),
        },
        { label: 'Boards made', value: costs.boards },
        {
          label: 'Per board',
          value: costs.boards > 0 ? formatNumber(costs.summary.total / costs.boards) : 'none made yet',
        },
      ]}
    >
      {(readable) => (
        <>
          <Ceiling view={readable} ceiling={ceiling} standing={standing} />
          <ByClass costs={costs} code={readable.code} />
          <ByDecision costs={costs} code={readable.code} />
          <WhenCheaper costs={costs} code={readable.code} />
        </>
      )}
    </ProgrammeSheet>
  )
}
