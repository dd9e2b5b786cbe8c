import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { PickBox, TextBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { addPerson } from './actions'
import { RIGHTS_CHOICES } from './rights'
import { WorksDepartmentBox } from './works-department-box'

/** Adds a person. How they sign in is asked only where there is a choice. */
export function AddPersonForm({ identityProvider }: { identityProvider: string | undefined }) {
  return (
    <Section id="add" heading="Add a person">
      <CommandForm action={addPerson} formKey={randomUUID()} label="Add a person" className="form-narrow">
        <TextBox
          name="name"
          label="Name"
          hint="As it will stand on their signatures."
          maxLength={80}
          required
        />
        <TextBox name="email" type="email" label="E-mail address" autoComplete="off" required />
        <PickBox name="rights" label="Rights" choices={RIGHTS_CHOICES} defaultValue="member" required />
        <WorksDepartmentBox />
        {identityProvider && (
          <PickBox
            name="signsInBy"
            label="Signs in"
            hint="At the identity provider, the first sign-in with this address, if the provider has verified it, is bound to the person."
            choices={[
              { value: 'provider', text: `at ${identityProvider}` },
              { value: 'password', text: 'with a password kept here' },
            ]}
            defaultValue="provider"
            required
          />
        )}
        <SubmitButton>Add the person</SubmitButton>
      </CommandForm>
    </Section>
  )
}
