import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { refusal } from '@/shared/policy'
import type { Present, Review } from '@/shared/reviews/review'
import { recordAttendance } from '../actions'
import { AttendanceBoxes } from '../attendance-boxes'

/** Who is there, and the form to put it right while the minutes are open. */
export function Attendance({ view, review }: { view: ProgrammeView; review: Review }) {
  const { present, chairId, closed, number } = review
  return (
    <Section heading="Present">
      <ul className="attendance">
        {present.map((one) => (
          <li key={`${one.kind} ${one.name}`}>
            {one.name}
            <span className="faint">{partOf(view, one, chairId)}</span>
          </li>
        ))}
      </ul>
      {!closed && !refusal('record-attendance', view.actor) && (
        <CommandForm
          action={recordAttendance}
          formKey={randomUUID()}
          hidden={{ programme: view.code, review: number }}
          label="Record who is there"
          className="print-hidden"
        >
          <AnsweredDisclosure summary="Somebody came or left">
            <div className="form-narrow">
              <AttendanceBoxes
                members={view.state.members}
                chair={chairId}
                present={present.flatMap((one) => (one.kind === 'member' ? [one.personId] : []))}
                guests={present.flatMap((one) =>
                  one.kind === 'guest' ? [one.from ? `${one.name}, ${one.from}` : one.name] : [],
                )}
              />
              <SubmitButton kind="quiet">Record who is there</SubmitButton>
            </div>
          </AnsweredDisclosure>
        </CommandForm>
      )}
    </Section>
  )
}

/** ", quality, chair" */
function partOf(view: ProgrammeView, one: Present, chairId: string): string {
  if (one.kind === 'guest') return one.from ? `, guest: ${one.from}` : ', guest'
  const departments = view.state.members
    .filter(({ personId }) => personId === one.personId)
    .map(({ department }) => DEPARTMENT_NAMES[department].toLowerCase())
  return `, ${[...departments, ...(one.personId === chairId ? ['chair'] : [])].join(', ')}`
}
