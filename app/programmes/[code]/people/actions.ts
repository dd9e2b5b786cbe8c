'use server'
import { membersAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'

const back = (form: FormData): string => membersAddress(text(form, 'programme'))

export async function inviteMember(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'invite-member',
    form,
    () => ({
      programme: text(form, 'programme'),
      email: text(form, 'email'),
      department: text(form, 'department'),
    }),
    () => back(form),
  )
}

export async function removeMember(_state: FormState, form: FormData): Promise<FormState> {
  const toInput = () => ({
    programme: text(form, 'programme'),
    personId: text(form, 'personId'),
    department: text(form, 'department'),
    reason: text(form, 'reason'),
  })
  return submit('remove-member', form, toInput, () => back(form))
}

export async function handOverLead(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'hand-over-lead',
    form,
    () => ({ programme: text(form, 'programme'), personId: text(form, 'personId') }),
    () => back(form),
  )
}

export async function takeLead(_state: FormState, form: FormData): Promise<FormState> {
  return submit(
    'take-lead',
    form,
    () => ({ programme: text(form, 'programme'), reason: text(form, 'reason') }),
    () => back(form),
  )
}
