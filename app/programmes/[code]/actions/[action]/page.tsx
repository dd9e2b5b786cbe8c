import { notFound } from 'next/navigation'
import { actionsAddress, itemAddress, reviewAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { visitProgramme } from '@/app/frame/visit'
import { Day } from '@/app/ui/date'
import { readMinuteOf } from '@/lib/queries/reviews'
import { actionStatus } from '@/shared/gate/action-status'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { Answer } from './answer'
import { AnswerForm, DecisionForms, WithdrawForm } from './forms'

interface ActionPageProps {
  params: Promise<{ code: string; action: string }>
}

/** One question from a department to another, its answer, and what became of it. */
export default async function ActionPage({ params }: ActionPageProps) {
  const { code: asked, action: number } = await params
  const visit = await visitProgramme(asked)
  const code = visit.view.code
  const action = visit.view.state.actions.find((entry) => String(entry.number) === number)
  if (!action) notFound()
  const minuted = await readMinuteOf(visit.view.state.programme.id, action.number)
  const item = visit.view.state.items.find(({ definition }) => definition.key === action.itemKey)
  return (
    <ProgrammeSheet
      visit={visit}
      code={code}
      at={actionsAddress(code)}
      place={[{ text: 'Actions', href: actionsAddress(code) }, { text: `Action ${number}` }]}
      title={`Action ${number}`}
      supplement={item && <a href={itemAddress(code, item.definition.key)}>{item.definition.title}</a>}
      cells={[
        { label: 'From', value: `${DEPARTMENT_NAMES[action.from]}: ${action.askedByName}` },
        {
          label: 'To',
          value: minuted ? `${DEPARTMENT_NAMES[action.to]}: ${minuted.owner}` : DEPARTMENT_NAMES[action.to],
        },
        { label: 'About', value: action.kind },
        { label: 'Due', value: <Day at={action.dueOn} /> },
        { label: 'Status', value: actionStatus(action) },
      ]}
    >
      {(view) => (
        <>
          <p className="prose">{action.question}</p>
          {minuted && (
            <p className="faint">
              From{' '}
              <a href={`${reviewAddress(code, minuted.review)}#line-${minuted.line}`}>
                line {minuted.line} of review {minuted.review}
              </a>
              .
            </p>
          )}
          <Answer action={action} />
          <AnswerForm view={view} action={action} />
          <DecisionForms view={view} action={action} />
          <WithdrawForm view={view} action={action} />
        </>
      )}
    </ProgrammeSheet>
  )
}
