import { priced } from '@/app/ui/priced'
import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { Facts } from '@/app/ui/facts'
import { Notice } from '@/app/ui/notice'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import type { SignKind } from '@/app/ui/sign'
import { amountInWords } from '@/shared/cost/amount-in-words'
import { amountIn, COST_KIND_FACTS, PER_IN_WORDS } from '@/shared/cost/cost-line'
import type { ActionAnswer } from '@/shared/gate/action-answer'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'

/** What the asker's word is told as, beneath an answer. */
const SAID: Readonly<
  Record<NonNullable<ActionEntry['outcome']>, { kind: SignKind; title: string } | undefined>
> = {
  returned: { kind: 'warning', title: 'The answer was returned' },
  accepted: { kind: 'success', title: 'The answer is accepted' },
  withdrawn: undefined,
}

/** What was answered, by whom, and what the asker said to it. */
export function Answer({ action }: { action: ActionEntry }) {
  const { answer, answeredByName, answeredAt, outcome, outcomeWhy, to } = action
  const said = outcome && SAID[outcome]
  if (!answer) return <Empty title="Not answered yet">{DEPARTMENT_NAMES[to]} is asked.</Empty>
  return (
    <Section
      heading="Answer"
      lead={
        <>
          By {answeredByName} on {answeredAt && <Day at={answeredAt} />}
        </>
      }
    >
      <p className="prose">{answer.comment}</p>
      <Facts facts={[{ label: 'Feasible', value: answer.feasible }]} />
      <Amounts action={action} answer={answer} />
      {said && <Notice {...said}>{outcomeWhy}</Notice>}
    </Section>
  )
}

/** The amounts that were named; one that is not known is said so. */
function Amounts({ action: { study }, answer: { amounts } }: { action: ActionEntry; answer: ActionAnswer }) {
  if (amounts.length === 0) return <p className="field-hint">No amount and no lead time is named.</p>
  return (
    <RuledTable
      caption="Amounts named"
      rows={amounts.map((line, position) => ({ ...line, position }))}
      rowKey={({ position }) => position}
      columns={[
        { label: 'What', names: true, cell: ({ kind }) => COST_KIND_FACTS[kind].label },
        {
          label: 'For',
          cell: ({ kind, per }) => (kind === 'lead time' ? 'days' : per ? PER_IN_WORDS[per] : '–'),
        },
        { label: priced('Amount'), set: 'number', cell: (line) => amountInWords(amountIn(line), 9) },
        ...(study === null
          ? []
          : [{ label: 'Alternative', cell: (line: (typeof amounts)[number]) => line.alternative ?? 'all' }]),
      ]}
    />
  )
}
