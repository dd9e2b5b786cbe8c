import { randomUUID } from 'node:crypto'
import { AnsweredDisclosure } from '@/app/forms/answered-disclosure'
import { ColumnField } from '@/app/forms/column-field'
import { CommandForm } from '@/app/forms/command-form'
import { PreviewedSubmit } from '@/app/forms/previewed-submit'
import { TableEditor } from '@/app/forms/table-editor'
import { addRecord } from '@/app/records/actions'
import { Section } from '@/app/ui/section'
import { SubmitButton } from '@/app/ui/submit-button'
import type { RecordKind } from '@/shared/records/record-kind'

/** As many are taken at once. */
const MOST_AT_ONCE = 200

interface AddRecordsProps {
  kind: RecordKind
  /** Names the programme, or what of the works, that keeps them. */
  of: Readonly<Record<string, string>>
  /** It may ask first what would turn in the programmes of the works. */
  previewed?: boolean
  /** What the box of a column starts with, and says instead of the column's own help. */
  startOf?: (column: string) => { value?: unknown; hint?: string }
}

/** The forms that a kind of record gives by its declaration: for one, and for several typed, pasted or loaded. */
export function AddRecords({ kind, of, previewed, startOf }: AddRecordsProps) {
  const hidden = { ...of, kind: kind.key }
  return (
    <Section id="add" heading={`Add a ${kind.label}`}>
      <CommandForm action={addRecord} formKey={randomUUID()} hidden={hidden} label={`Add a ${kind.label}`}>
        <div className="form-row">
          {Object.entries(kind.columns).map(([name, column]) => (
            <ColumnField key={name} name={`rows.0.${name}`} column={column} {...startOf?.(name)} />
          ))}
        </div>
        {previewed ? <PreviewedSubmit>Add it</PreviewedSubmit> : <SubmitButton>Add it</SubmitButton>}
      </CommandForm>
      <CommandForm
        action={addRecord}
        formKey={randomUUID()}
        hidden={{ ...hidden, many: 'yes' }}
        label={`Add several ${kind.plural.toLowerCase()}`}
      >
        <AnsweredDisclosure summary="Add several at once, typed, pasted or loaded">
          <TableEditor
            name="rows"
            caption={kind.plural}
            columns={kind.columns}
            rows={[]}
            maxRows={MOST_AT_ONCE}
          />
          {previewed ? <PreviewedSubmit>Add them</PreviewedSubmit> : <SubmitButton>Add them</SubmitButton>}
        </AnsweredDisclosure>
      </CommandForm>
    </Section>
  )
}
