import { randomUUID } from 'node:crypto'
import { newPartAddress } from '@/app/addresses'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, TextBox } from '@/app/forms/fields'
import { requirePerson } from '@/app/frame/visit'
import { describePart } from '@/app/works/parts/actions'
import { MayNot } from '@/app/works/parts/may-not'
import { PartFields } from '@/app/works/parts/part-fields'
import { PartsSheet } from '@/app/works/parts/parts-sheet'
import { SubmitButton } from '@/app/ui/submit-button'
import { worksActor } from '@/lib/auth/works-actor'
import { refusal } from '@/shared/policy'

export const metadata = { title: 'Describe a part – Liquidus' }

/** A part described for the first time. */
export default async function NewPartPage() {
  const person = await requirePerson(newPartAddress())
  const refused = refusal('describe-part', worksActor(person))
  return (
    <PartsSheet
      person={person}
      title="Describe a part"
      supplement="As its data sheet and drawing have it; what they do not say stays open"
      place={[{ text: 'Describe a part' }]}
    >
      {refused ? (
        <MayNot>{refused}</MayNot>
      ) : (
        <CommandForm
          action={describePart}
          formKey={randomUUID()}
          label="Describe a part"
          className="form-stack"
        >
          <TextBox name="code" label="Part number" hint="As parts lists name it." maxLength={80} required />
          <PartFields />
          <LinesBox
            name="reason"
            label="Why"
            hint="What it is described from, such as the data sheet and its issue."
            rows={2}
            required
          />
          <SubmitButton>Describe the part</SubmitButton>
        </CommandForm>
      )}
    </PartsSheet>
  )
}
