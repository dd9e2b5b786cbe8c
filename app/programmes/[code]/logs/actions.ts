'use server'
import { logAddress } from '@/app/addresses'
import { rowFromForm } from '@/app/forms/column-value'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import { findCharacteristic } from '@/shared/records/characteristics'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { RECORD_KINDS } from '@/shared/records/record-kinds'

export async function openLog(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const toInput = () => ({
    programme,
    code: text(form, 'code'),
    characteristic: text(form, 'characteristic'),
    line: text(form, 'line'),
    machine: text(form, 'machine'),
    instrument: text(form, 'instrument') || null,
  })
  return submit('open-log', form, toInput, ({ result }) => logAddress(programme, String(result['log'])))
}

/** One reading typed in at the line. */
export async function addReading(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, log] = [text(form, 'programme'), text(form, 'log')]
  const characteristic = findCharacteristic(text(form, 'characteristic'))
  const at = Date.parse(`${text(form, 'readings.0.at')}Z`)
  if (!characteristic || Number.isNaN(at)) {
    const says = 'Say when it was read: date and time.'
    return { message: says, fields: { 'readings.0.at': says }, typed: typedIn(form) }
  }
  const row = rowFromForm(form, 'readings.0', characteristic.columns)
  const toInput = () => ({
    programme,
    log,
    readings: readingsFromRows([{ at, ...row }]),
    file: null,
    mapping: null,
  })
  return submit('add-readings', form, toInput, () => logAddress(programme, log))
}

/** The cause of a signal and what was done; the reading it names must be an instant, or it would answer nothing. */
export async function answerSignal(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, log] = [text(form, 'programme'), text(form, 'log')]
  const row = rowFromForm(form, 'rows.0', RECORD_KINDS['signal-answer'].columns)
  if (Number.isNaN(Date.parse(String(row['readingAt'])))) {
    const says = 'Name the reading by its instant, such as 2026-03-31T07:40:00Z.'
    return { message: says, fields: { 'rows.0.readingAt': says }, typed: typedIn(form) }
  }
  return submit(
    'add-record',
    form,
    () => ({ programme, kind: 'signal-answer', rows: [{ ...row, log }] }),
    () => `${logAddress(programme, log)}#signals`,
  )
}
