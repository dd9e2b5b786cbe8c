import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { TableEditor } from '@/app/forms/table-editor'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { refusal } from '@/shared/policy'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { recordStudy } from '../actions'
import { STUDY_COLUMNS } from '../study-columns'

/** Two people, five parts, three trials without scripts; more are added or pasted with them. */
const BLANK_ROWS = Array.from({ length: 30 }, () => ({}))
const MAX_ROWS = 600

/** The readings of a study entered together, typed or pasted from a spreadsheet. */
export function RecordStudy({ view, tag }: { view: ProgrammeView; tag: string }) {
  const kind = RECORD_KINDS['gauge-reading']
  if (refusal('add-record', view.actor, kind)) return null
  return (
    <Section id="record-study" heading="Record a gauge study" lead={kind.help}>
      <CommandForm
        action={recordStudy}
        formKey={randomUUID()}
        hidden={{ programme: view.code, tag }}
        label="Record a gauge study"
      >
        <AnsweredDisclosure summary="Enter its readings">
          <div className="form-stack">
            <TextBox
              name="study"
              label="Name of the study"
              hint="Rows with the same name belong to one study."
              required
            />
            <TableEditor
              name="rows"
              caption="Readings of the study"
              columns={STUDY_COLUMNS}
              rows={BLANK_ROWS}
              maxRows={MAX_ROWS}
            />
            <SubmitButton>Record the study</SubmitButton>
          </div>
        </AnsweredDisclosure>
      </CommandForm>
    </Section>
  )
}
