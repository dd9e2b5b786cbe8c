'use server'
import { concessionAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'

const named = (form: FormData) => ({
  programme: text(form, 'programme'),
  concession: Number(text(form, 'concession')),
})
const back = (form: FormData): string => concessionAddress(text(form, 'programme'), text(form, 'concession'))

export async function grantConcession(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'grant-concession',
    form,
    () => ({ ...named(form), department: text(form, 'department') }),
    () => back(form),
  )
}

export async function refuseConcession(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'refuse-concession',
    form,
    () => ({ ...named(form), reason: text(form, 'reason') }),
    () => back(form),
  )
}
