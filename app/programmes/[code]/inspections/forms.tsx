import { randomUUID } from 'node:crypto'
import { CommandForm } from '@/app/forms/command-form'
import { LinesBox, NumberBox, TextBox } from '@/app/forms/fields'
import { TableEditor } from '@/app/forms/table-editor'
import { Disclosure } from '@/app/ui/disclosure'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { recordInspection, recordMany } from './actions'
import { DEFECT_COLUMNS } from './defect-columns'

/** Entry at the bench: what was said of the last assembly stands again, so that only what differs is typed. */
export function InspectionForms({ view, again }: { view: ProgrammeView; again: string | undefined }) {
  const [inspector = view.actor.name, magnification = '', jointsSeen = ''] = repeated(again)
  const { today } = view.state.facts
  return (
    <Section id="new" heading="Record an inspection">
      <CommandForm
        action={recordInspection}
        formKey={randomUUID()}
        hidden={{ programme: view.code }}
        label="Record an inspection"
      >
        <div className="form-row">
          <TextBox name="inspections.0.assembly" label="Assembly" required autoFocus={again !== undefined} />
          <TextBox name="inspections.0.inspectedOn" type="date" label="On" defaultValue={today} required />
          <TextBox name="inspections.0.inspector" label="Inspector" defaultValue={inspector} required />
          <NumberBox
            name="inspections.0.magnification"
            label="Magnification"
            unit="×"
            defaultValue={magnification}
            required
          />
          <NumberBox
            name="inspections.0.jointsSeen"
            label="Joints seen"
            unit="joints"
            defaultValue={jointsSeen}
            required
          />
        </div>
        <TableEditor
          name="inspections.0.defects"
          caption="Defects found"
          columns={DEFECT_COLUMNS}
          rows={[]}
          maxRows={100}
        />
        <TextBox name="inspections.0.note" label="Note" optional />
        <SubmitButton>Record the inspection</SubmitButton>
      </CommandForm>
      <Disclosure summary="Record many assemblies at once" printed={false}>
        <CommandForm
          action={recordMany}
          formKey={randomUUID()}
          hidden={{ programme: view.code }}
          label="Record many inspections"
          className="form-narrow"
        >
          <TextBox name="inspectedOn" type="date" label="On" defaultValue={today} required />
          <TextBox name="inspector" label="Inspector" defaultValue={inspector} required />
          <NumberBox
            name="magnification"
            label="Magnification"
            unit="×"
            defaultValue={magnification}
            required
          />
          <LinesBox
            name="lines"
            label="Assemblies"
            rows={8}
            hint="One a line: serial number; joints seen; then each defect as kind@joint. For example: LX41-0007; 306; bridge@U3-4"
            required
          />
          <SubmitButton>Record them all, or none</SubmitButton>
        </CommandForm>
      </Disclosure>
    </Section>
  )
}

function repeated(again: string | undefined): string[] {
  try {
    const values: unknown = again ? JSON.parse(again) : []
    return Array.isArray(values) ? values.map(String) : []
  } catch {
    return []
  }
}
