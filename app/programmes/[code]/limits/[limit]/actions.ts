'use server'
import { limitAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { number, submit, text, ticked } from '@/app/forms/submit'

const back = (form: FormData): string => limitAddress(text(form, 'programme'), text(form, 'limit'))

export async function stateRequirement(_state: FormState, form: FormData): Promise<FormState> {
  const toInput = () => ({
    programme: text(form, 'programme'),
    limit: text(form, 'limit'),
    authority: text(form, 'authority'),
    document: text(form, 'document'),
    clause: text(form, 'clause'),
    value: number(form, 'value'),
    relaxes: ticked(form, 'relaxes'),
    reason: text(form, 'reason'),
  })
  return submit('state-requirement', form, toInput, () => back(form))
}

export async function withdrawRequirement(_state: FormState, form: FormData): Promise<FormState> {
  const toInput = () => ({
    programme: text(form, 'programme'),
    requirement: text(form, 'requirement'),
    reason: text(form, 'reason'),
  })
  return submit('withdraw-requirement', form, toInput, () => back(form))
}
