import { Day } from '@/app/ui/date'
import { Empty } from '@/app/ui/empty'
import { Facts } from '@/app/ui/facts'
import { Notice } from '@/app/ui/notice'
import { Quantity } from '@/app/ui/quantity'
import { Section } from '@/app/ui/section'
import type { SignKind } from '@/app/ui/sign'
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

const PER = { board: 'a board', lot: 'a lot', once: 'once' } as const

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
      <Facts
        facts={[
          { label: 'Feasible', value: answer.feasible },
          {
            label: 'Money',
            value:
              answer.amount === null ? (
                'none named'
              ) : (
                <>
                  <Quantity value={answer.amount} unit="currency" />{' '}
                  {answer.amountPer && PER[answer.amountPer]}
                </>
              ),
          },
          {
            label: 'Lead time',
            value:
              answer.leadTimeDays === null ? (
                'none named'
              ) : (
                <Quantity value={answer.leadTimeDays} unit="days" />
              ),
          },
        ]}
      />
      {said && <Notice {...said}>{outcomeWhy}</Notice>}
    </Section>
  )
}
