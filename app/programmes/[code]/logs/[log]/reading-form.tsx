import { randomUUID } from 'node:crypto'
import { ColumnField } from '@/app/forms/column-field'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import type { Log } from '@/shared/records/log'
import { addReading } from '../actions'

/** One reading, typed in at the line. */
export function ReadingForm({ view, log }: { view: ProgrammeView; log: Log }) {
  const { columns } = CHARACTERISTICS[log.characteristic as CharacteristicKey]
  const now = new Date().toISOString().slice(0, 16)
  return (
    <CommandForm
      action={addReading}
      formKey={randomUUID()}
      hidden={{ programme: view.code, log: log.code, characteristic: log.characteristic }}
      label="Add a reading"
      className="form-narrow"
    >
      <TextBox name="at" type="datetime-local" label="Time, UTC" defaultValue={now} required />
      {Object.entries(columns).map(([name, column]) => (
        <ColumnField key={name} name={`readings.0.${name}`} column={column} />
      ))}
      <SubmitButton>Add the reading</SubmitButton>
    </CommandForm>
  )
}
