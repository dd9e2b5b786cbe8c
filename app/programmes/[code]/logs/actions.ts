'use server'
import { logAddress } from '@/app/addresses'
import { rowFromForm } from '@/app/forms/column-value'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'

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
  const characteristic = CHARACTERISTICS[text(form, 'characteristic') as CharacteristicKey]
  const toInput = () => {
    const at = Date.parse(`${text(form, 'at')}Z`)
    const row = rowFromForm(form, 'readings.0', characteristic.columns)
    const columns = Object.fromEntries(Object.entries(row).map(([name, value]) => [name, [value]]))
    return {
      programme,
      log,
      readings: { count: 1, columns: { at: [at], ...columns } },
      file: null,
      mapping: null,
    }
  }
  return submit('add-readings', form, toInput, () => logAddress(programme, log))
}

export async function answerSignal(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, log] = [text(form, 'programme'), text(form, 'log')]
  const row = Object.fromEntries(
    ['log', 'chartRule', 'readingAt', 'answer', 'cause', 'action', 'by', 'on'].map((name) => [
      name,
      text(form, name),
    ]),
  )
  return submit(
    'add-record',
    form,
    () => ({ programme, kind: 'signal-answer', rows: [row] }),
    () => `${logAddress(programme, log)}#signals`,
  )
}
