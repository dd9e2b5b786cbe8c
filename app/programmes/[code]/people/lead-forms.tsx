import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { ChoiceBox, PickBox, TextBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import { handOverLead, inviteMember } from '@/app/forms/command-actions'

/** What the lead does about people: invite one, or hand the lead over. */
export function LeadForms({ view }: { view: ProgrammeView }) {
  return (
    <>
      <Section heading="Invite a person">
        <CommandForm
          action={inviteMember}
          formKey={randomUUID()}
          hidden={{ programme: view.code }}
          label="Invite a person"
          className="form-narrow"
        >
          <TextBox
            name="email"
            type="email"
            label="E-mail address"
            hint="They have to be able to sign in here; an administrator adds people."
            autoComplete="off"
            required
          />
          <PickBox
            name="department"
            label="Department"
            choices={DEPARTMENTS.map((value) => ({ value, text: DEPARTMENT_NAMES[value] }))}
            required
          />
          <SubmitButton>Invite</SubmitButton>
        </CommandForm>
      </Section>
      <HandOverForm view={view} />
    </>
  )
}

function HandOverForm({ view: { code, state } }: { view: ProgrammeView }) {
  const others = new Map(
    state.members
      .filter(({ personId }) => personId !== state.programme.leadId)
      .map(({ personId, name }) => [personId, name]),
  )
  if (others.size === 0) return null
  return (
    <CommandForm
      action={handOverLead}
      formKey={randomUUID()}
      hidden={{ programme: code }}
      label="Hand the lead over"
    >
      <AnsweredDisclosure summary="Hand the lead over">
        <div className="form-narrow">
          <ChoiceBox
            name="personId"
            label="New lead"
            hint="You stay a member of your department, and can no longer invite people or tailor the plan as lead."
            choices={[...others].map(([value, text]) => ({ value, text }))}
          />
          <SubmitButton kind="quiet">Hand the lead over</SubmitButton>
        </div>
      </AnsweredDisclosure>
    </CommandForm>
  )
}
