import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, NumberBox, TextBox } from '@/app/forms/fields'
import { Disclosure } from '@/app/ui/disclosure'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { recordMany } from './actions'

/** A whole batch at once, one assembly a line. */
export function ManyAtOnce({ view }: { view: ProgrammeView }) {
  return (
    <Disclosure summary="Record many assemblies at once" printed={false}>
      <CommandForm
        action={recordMany}
        formKey={randomUUID()}
        hidden={{ programme: view.code }}
        label="Record many inspections"
        className="form-narrow"
      >
        <TextBox name="inspectedOn" type="date" label="On" defaultValue={view.state.facts.today} required />
        <TextBox name="inspector" label="Inspector" defaultValue={view.actor.name} required />
        <NumberBox name="magnification" label="Magnification" unit="×" required />
        <LinesBox
          name="lines"
          label="Assemblies"
          rows={8}
          hint="One a line: serial number; joints inspected; then each defect as kind@joint. For example: LX41-0007; 306; bridge@U3-4"
          required
        />
        <SubmitButton>Record them all, or none</SubmitButton>
      </CommandForm>
    </Disclosure>
  )
}
