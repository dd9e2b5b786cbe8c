import { randomUUID } from 'node:crypto'
import { alternativeAddress } from '@/app/addresses'
import { withdrawAlternative } from '@/app/forms/command-actions'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { Deed, OptionAlternative } from '@/shared/gate/option-alternative'
import type { OptionStudy } from '@/shared/gate/option-study'
import { standing, studyRevision } from '@/shared/gate/study-revision'
import { refusal } from '@/shared/policy'

/** What was added, changed and withdrawn since the study was opened, and, while it is open, the way to do so. */
export function Revising({ view, study }: { view: ProgrammeView; study: OptionStudy }) {
  const mayRevise = !study.adoption && !refusal('change-alternative', view.actor)
  if (!mayRevise && studyRevision(study.alternatives) === 1) return null
  return (
    <Section
      id="revisions"
      heading="Revisions of the study"
      aside={mayRevise && <a href={alternativeAddress(view.code, study.number)}>Add an alternative</a>}
    >
      <RuledTable
        caption="Alternatives and what was done to them"
        captionHidden
        rows={study.alternatives}
        rowKey={({ name }) => name}
        columns={[
          {
            label: 'Alternative',
            names: true,
            cell: ({ name, withdrawn }) => (withdrawn ? <s>{name}</s> : name),
          },
          { label: 'What was done', cell: (alternative) => <Deeds alternative={alternative} /> },
          ...(mayRevise
            ? [
                {
                  label: 'Revise',
                  cell: (alternative: OptionAlternative) => (
                    <Revise view={view} study={study} alternative={alternative} />
                  ),
                },
              ]
            : []),
        ]}
      />
    </Section>
  )
}

function Deeds({ alternative: { added, changed, withdrawn } }: { alternative: OptionAlternative }) {
  const deeds: (readonly [string, Deed])[] = [
    ...(added ? [['Added', added] as const] : []),
    ...changed.map((deed) => ['Changed', deed] as const),
    ...(withdrawn ? [['Withdrawn', withdrawn] as const] : []),
  ]
  if (deeds.length === 0) return <>as the study was opened</>
  return (
    <ul className="option-differences">
      {deeds.map(([what, { byName, at, why }]) => (
        <li key={`${what} ${at}`}>
          {what} by {byName}, <Day at={at} />: {why}
        </li>
      ))}
    </ul>
  )
}

interface ReviseProps {
  view: ProgrammeView
  study: OptionStudy
  alternative: OptionAlternative
}

function Revise({ view, study, alternative: { name, withdrawn } }: ReviseProps) {
  if (withdrawn) return <>–</>
  return (
    <>
      <a href={alternativeAddress(view.code, study.number, name)}>
        Change<span className="sr-only"> {name}</span>
      </a>
      {standing(study.alternatives).length > 1 && (
        <CommandForm
          action={withdrawAlternative}
          formKey={randomUUID()}
          hidden={{
            programme: view.code,
            study: study.number,
            revision: studyRevision(study.alternatives),
            name,
          }}
          label={`Withdraw ${name}`}
        >
          <AnsweredDisclosure summary="Withdraw">
            <div className="form-narrow">
              <TextBox name="reason" label="Why" required />
              <SubmitButton kind="danger">Withdraw</SubmitButton>
            </div>
          </AnsweredDisclosure>
        </CommandForm>
      )}
    </>
  )
}
