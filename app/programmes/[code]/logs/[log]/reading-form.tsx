import { randomUUID } from 'node:crypto'
import { logAddress } from '@/app/addresses'
import { ColumnField } from '@/app/forms/column-field'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import { works } from '@/lib/settings/works'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { wallTimeOf } from '@/shared/quantity/works-clock'
import type { Characteristic } from '@/shared/records/characteristic'
import type { Log } from '@/shared/records/log'
import { addReading } from '../actions'
import { LiveReading } from './live-reading'

interface ReadingFormProps {
  view: ProgrammeView
  log: Log
  characteristic: Characteristic
}

/** One reading, typed in at the line. */
export function ReadingForm({ view, log, characteristic }: ReadingFormProps) {
  const { timeZone } = works()
  const now = wallTimeOf(new Date().getTime(), timeZone).slice(0, 16)
  return (
    <CommandForm
      action={addReading}
      formKey={randomUUID()}
      hidden={{ programme: view.code, log: log.code, characteristic: log.characteristic }}
      label="Add a reading"
      className="form-narrow"
    >
      <LiveReading address={`${logAddress(view.code, log.code)}/would-find`}>
        {Object.entries(characteristic.columns).map(([name, column]) => (
          <ColumnField key={name} name={`readings.0.${name}`} column={column} />
        ))}
        <TextBox
          name="readings.0.at"
          type="datetime-local"
          label={`Read at, ${timeZone}`}
          defaultValue={now}
          required
        />
      </LiveReading>
      <SubmitButton>Add the reading</SubmitButton>
    </CommandForm>
  )
}
