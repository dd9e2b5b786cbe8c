import { randomUUID } from 'node:crypto'
import { machineLogAddress } from '@/app/addresses'
import { ColumnField } from '@/app/forms/column-field'
import { CommandForm } from '@/app/forms/command-form'
import { TextBox } from '@/app/forms/fields'
import { SubmitButton } from '@/app/ui/submit-button'
import { works } from '@/lib/settings/works'
import { wallTimeOf } from '@/shared/quantity/works-clock'
import type { Characteristic } from '@/shared/records/characteristic'
import { addReading } from './actions'
import { LiveReading } from './live-reading'

interface ReadingFormProps {
  machine: string
  log: string
  characteristic: Characteristic
}

/** One reading, typed in at the line. */
export function ReadingForm({ machine, log, characteristic }: ReadingFormProps) {
  const { timeZone } = works()
  const now = wallTimeOf(new Date().getTime(), timeZone).slice(0, 16)
  return (
    <CommandForm
      action={addReading}
      formKey={randomUUID()}
      hidden={{ machine, log, characteristic: characteristic.key }}
      label="Add a reading"
      className="form-narrow"
    >
      <LiveReading address={`${machineLogAddress(machine, log)}/would-find`}>
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
