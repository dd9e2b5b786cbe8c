'use server'
import { instrumentsAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'

const calibration = (form: FormData) => ({
  calibratedOn: text(form, 'calibratedOn'),
  dueOn: text(form, 'dueOn'),
  certificate: text(form, 'certificate'),
})

export async function addInstrument(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'add-instrument',
    form,
    () => ({ tag: text(form, 'tag'), measures: text(form, 'measures'), ...calibration(form) }),
    instrumentsAddress,
  )
}

export async function calibrateInstrument(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'calibrate-instrument',
    form,
    () => ({ instrument: text(form, 'instrument'), ...calibration(form) }),
    instrumentsAddress,
  )
}

export async function takeOutOfUse(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'take-instrument-out-of-use',
    form,
    () => ({ instrument: text(form, 'instrument'), reason: text(form, 'reason') }),
    instrumentsAddress,
  )
}
