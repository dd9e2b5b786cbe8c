'use server'
import { concessionAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { numberOrNull, submit, text } from '@/app/forms/submit'

export async function requestConcession(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const toInput = () => ({
    programme,
    item: text(form, 'item'),
    rule: text(form, 'rule'),
    why: text(form, 'why'),
    quantity: numberOrNull(form, 'quantity'),
    untilOn: text(form, 'untilOn') || null,
  })
  return submit('request-concession', form, toInput, ({ result }) =>
    concessionAddress(programme, Number(result['concession'])),
  )
}
