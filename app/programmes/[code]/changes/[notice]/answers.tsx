import { randomUUID } from 'node:crypto'
import { answerChangeNotice } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, PickBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { NoticeStanding } from '@/shared/gate/change-notice'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'

interface AnswersProps {
  view: ProgrammeView
  standing: NoticeStanding
}

/** What each department says to the notice as it stands, and the form for this person's. */
export function Answers({ view, standing }: AnswersProps) {
  const { notice, digest, answers } = standing
  const open = notice.disposition === null
  return (
    <Section
      id="answers"
      heading="Answers"
      lead="An answer is to what the notice proposes and turns; it lapses when either changes."
    >
      <RuledTable
        caption="Answers of the departments"
        captionHidden
        rows={answers}
        rowKey={({ department }) => department}
        columns={[
          { label: 'Department', names: true, cell: ({ department }) => DEPARTMENT_NAMES[department] },
          {
            label: 'Answer',
            cell: ({ answer, holds }) => {
              if (!answer) return <span className="faint">none yet</span>
              const said = answer.agrees ? 'agrees' : 'objects'
              return !open || holds ? said : `${said}, to an earlier state`
            },
          },
          { label: 'Why', cell: ({ answer }) => answer?.reason ?? '' },
          {
            label: 'By',
            cell: ({ answer }) =>
              answer && (
                <>
                  {answer.personName}, <Day at={answer.at} />
                </>
              ),
          },
        ]}
      />
      {open &&
        view.actor.departments.map((department) => {
          const name = DEPARTMENT_NAMES[department]
          const refused = refusal('answer-change-notice', view.actor, { department, standing })
          if (refused)
            return (
              <p key={department} className="field-hint">
                For {name.toLowerCase()}: {refused}
              </p>
            )
          return (
            <CommandForm
              key={department}
              action={answerChangeNotice}
              formKey={randomUUID()}
              hidden={{ programme: view.code, notice: notice.number, department, digest }}
              label={`Answer for ${name}`}
              className="form-narrow"
            >
              <PickBox
                name="answer"
                label={`${name} answers`}
                choices={[
                  { value: 'agree', text: 'Agrees' },
                  { value: 'object', text: 'Objects, for the reason below' },
                ]}
              />
              <LinesBox name="reason" label="Why" rows={2} optional />
              <SubmitButton>Answer for {name}</SubmitButton>
            </CommandForm>
          )
        })}
    </Section>
  )
}
