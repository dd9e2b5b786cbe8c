import { notFound } from 'next/navigation'
import { actionsAddress, itemAddress, optionAddress, reviewAddress } from '@/app/addresses'
import { ProgrammeSheet } from '@/app/frame/programme-sheet'
import { programmePage, programmeTitle } from '@/app/frame/programme-page'
import { Day } from '@/app/ui/date'
import { openUploadAnswer } from '@/lib/evidence/upload-answer'
import { uploadSecret } from '@/lib/evidence/upload-secret'
import { readOptionStudy } from '@/lib/queries/option-studies'
import { readMinuteOf } from '@/lib/queries/reviews'
import { standing } from '@/shared/gate/study-revision'
import { actionStatus } from '@/shared/gate/action-status'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { Answer } from './answer'
import { AnswerFiles } from './files'
import { AnswerForm, DecisionForms, WithdrawForm } from './forms'

export const generateMetadata = programmeTitle<{ action: string }>(
  ({ code, action }) => `Action ${action}, ${code}`,
)

/** One question from a department to another, its answer, and what became of it. */
export default programmePage<{ action: string }, { upload?: string }>(
  async ({ visit, code, params: { action: number }, searchParams }) => {
    const action = visit.view.state.actions.find((entry) => String(entry.number) === number)
    if (!action) notFound()
    const study =
      action.study === null ? undefined : await readOptionStudy(visit.view.state.programme.id, action.study)
    const upload = openUploadAnswer(searchParams.upload, uploadSecret())
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
            value: [DEPARTMENT_NAMES[action.to], action.askedOf?.name ?? minuted?.owner]
              .filter((name) => name !== undefined)
              .join(': '),
          },
          { label: 'About', value: action.kind },
          { label: 'Due', value: <Day at={action.dueOn} /> },
          { label: 'Status', value: actionStatus(action) },
        ]}
      >
        {(view) => (
          <>
            <p className="prose">{action.question}</p>
            {study && (
              <p>
                Asked within the study{' '}
                <a href={optionAddress(view.code, study.number)}>
                  {study.number}: {study.title}
                </a>
                ; its amounts count there.
              </p>
            )}
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
            <AnswerForm
              view={view}
              action={action}
              alternatives={standing(study?.alternatives ?? []).map(({ name }) => name)}
            />
            <AnswerFiles view={view} action={action} answer={upload} />
            <DecisionForms view={view} action={action} />
            <WithdrawForm view={view} action={action} />
          </>
        )}
      </ProgrammeSheet>
    )
  },
)
