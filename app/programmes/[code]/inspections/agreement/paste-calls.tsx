import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, TextBox } from '@/app/forms/fields'
import { Disclosure } from '@/app/ui/disclosure'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { recordCallsPasted } from './actions'

/** A whole study at once, from a spreadsheet or a file. */
export function PasteCalls({ view }: { view: ProgrammeView }) {
  return (
    <Disclosure summary="Record calls from a table or a CSV file" printed={false}>
      <CommandForm
        action={recordCallsPasted}
        formKey={randomUUID()}
        hidden={{ programme: view.code }}
        label="Record calls from a table"
        className="form-narrow"
      >
        <TextBox name="study" label="Study" required />
        <TextBox
          name="calledOn"
          type="date"
          label="Called on"
          defaultValue={view.state.facts.today}
          required
        />
        <LinesBox
          name="lines"
          label="Calls"
          rows={10}
          hint="Paste the lines, parted by tab, semicolon or comma: inspector; joint; call; round; known to be. The last two may be left out. For example: Iris Holm; S1-07; bridge; 1; bridge"
          required
        />
        <SubmitButton>Record all calls, or none</SubmitButton>
      </CommandForm>
    </Disclosure>
  )
}
