import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { PickBox, TextBox } from '@/app/forms/fields'
import { RIGHTS_CHOICES } from '@/app/people/rights'
import { WorksDepartmentBox } from '@/app/people/works-department-box'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { PersonRow } from '@/lib/queries/people'
import { changePerson, disablePerson, enablePerson } from '@/app/forms/command-actions'
import { resetPassword } from '../actions'

interface FormProps {
  person: PersonRow
}

export function ChangeForm({ person: { id, name, email, rights, worksDepartment } }: FormProps) {
  return (
    <Section
      heading="Name, address and rights"
      lead="What was signed keeps the name it was signed with. Other rights end the sessions that are open."
    >
      <CommandForm
        action={changePerson}
        formKey={randomUUID()}
        hidden={{ personId: id }}
        label={`Change ${name}`}
        className="form-narrow"
      >
        <TextBox name="name" label="Name" defaultValue={name} maxLength={80} required />
        <TextBox
          name="email"
          type="email"
          label="E-mail address"
          defaultValue={email}
          autoComplete="off"
          required
        />
        <PickBox name="rights" label="Rights" choices={RIGHTS_CHOICES} defaultValue={rights} required />
        <WorksDepartmentBox now={worksDepartment} />
        <SubmitButton>Keep the changes</SubmitButton>
      </CommandForm>
    </Section>
  )
}

const AT_PROVIDER: Readonly<Record<PersonRow['signsInBy'], boolean>> = {
  password: false,
  'one-time password': false,
  'identity provider': true,
  'identity provider, not used yet': true,
}

/** A new one-time password; for a person of the identity provider it opens a second way in. */
export function PasswordForm({ person: { id, name, signsInBy } }: FormProps) {
  const atProvider = AT_PROVIDER[signsInBy]
  return (
    <Section
      heading="Password"
      lead={
        atProvider
          ? 'They sign in at the identity provider. A password given here would be a second way in, and what they sign would ask for it.'
          : 'For somebody who forgot theirs. The sessions they have open end.'
      }
    >
      <CommandForm
        action={resetPassword}
        formKey={randomUUID()}
        hidden={{ personId: id, name }}
        label={`Give ${name} a one-time password`}
        className="form-narrow"
      >
        <SubmitButton kind="quiet">Give a one-time password</SubmitButton>
      </CommandForm>
    </Section>
  )
}

export function AccessForm({ person: { id, name, disabledAt } }: FormProps) {
  return (
    <Section
      heading="Access"
      lead={
        disabledAt
          ? 'They cannot sign in. What they signed stands.'
          : 'Somebody who leaves is not deleted: what they signed stands, and they cannot sign in any more.'
      }
    >
      <CommandForm
        action={disabledAt ? enablePerson : disablePerson}
        formKey={randomUUID()}
        hidden={{ personId: id }}
        label={disabledAt ? `Let ${name} sign in again` : `End the access of ${name}`}
        className="form-narrow"
      >
        <TextBox name="reason" label="Why" required />
        <SubmitButton kind={disabledAt ? 'primary' : 'danger'}>
          {disabledAt ? 'Open the access again' : 'End the access'}
        </SubmitButton>
      </CommandForm>
    </Section>
  )
}
