'use server'
import { logAddress } from '@/app/addresses'
import { rowFromForm } from '@/app/forms/column-value'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import { signalsAnswered } from '@/app/signals/ticked-signals'
import { findCharacteristic } from '@/shared/records/characteristics'
import { ANSWER_COLUMNS } from '@/shared/records/kinds/answer-columns'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { Refused } from '@/shared/refused'

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
  const toInput = () => {
    const characteristic = findCharacteristic(text(form, 'characteristic'))
    const at = Date.parse(`${text(form, 'readings.0.at')}Z`)
    if (!characteristic || Number.isNaN(at)) {
      const says = 'Say when it was read: date and time.'
      throw new Refused(says, { 'readings.0.at': says })
    }
    const row = rowFromForm(form, 'readings.0', characteristic.columns)
    return { programme, log, readings: readingsFromRows([{ at, ...row }]), file: null, mapping: null }
  }
  return submit('add-readings', form, toInput, () => logAddress(programme, log))
}

/** One answer to every ticked signal of a log: the cause, and what was done. */
export async function answerSignals(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, log] = [text(form, 'programme'), text(form, 'log')]
  const toInput = () => {
    const answer = rowFromForm(form, 'rows.0', ANSWER_COLUMNS)
    const rows = signalsAnswered(form).map(([chartRule = '', readingAt = '']) => ({
      log,
      chartRule,
      readingAt,
      ...answer,
    }))
    return { programme, kind: 'signal-answer', rows }
  }
  return submit('add-record', form, toInput, () => `${logAddress(programme, log)}#signals`)
}
