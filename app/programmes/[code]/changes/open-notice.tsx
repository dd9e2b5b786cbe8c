import { randomUUID } from 'node:crypto'
import { openChangeNotice } from '@/app/forms/command-actions'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, TextBox } from '@/app/forms/fields'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import { CostBoxes } from './cost-boxes'

/** The head of a new notice; its changes are put in on its own page. */
export function OpenNotice({ code }: { code: string }) {
  return (
    <Section id="open" heading="Open a change notice">
      <CommandForm
        action={openChangeNotice}
        formKey={randomUUID()}
        hidden={{ programme: code }}
        label="Open a change notice"
        className="form-narrow"
      >
        <TextBox name="title" label="Title" required />
        <LinesBox name="reason" label="Why the changes are wanted" rows={2} required />
        <CostBoxes />
        <SubmitButton>Open the notice</SubmitButton>
      </CommandForm>
    </Section>
  )
}
