'use server'
import { actionAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { numberOrNull, submit, text } from '@/app/forms/submit'
import type { CommandName } from '@/shared/policy'

const named = (form: FormData) => ({
  programme: text(form, 'programme'),
  action: Number(text(form, 'action')),
})

const send = (command: CommandName, form: FormData, more: object): Promise<FormState> =>
  submit(
    command,
    form,
    () => ({ ...named(form), ...more }),
    () => actionAddress(text(form, 'programme'), text(form, 'action')),
  )

export async function answerAction(_state: FormState, form: FormData): Promise<FormState> {
  return send('answer-action', form, {
    feasible: text(form, 'feasible'),
    amount: numberOrNull(form, 'amount'),
    amountPer: text(form, 'amountPer') || null,
    leadTimeDays: numberOrNull(form, 'leadTimeDays'),
    comment: text(form, 'comment'),
  })
}

export async function acceptAnswer(_state: FormState, form: FormData): Promise<FormState> {
  return send('accept-answer', form, { comment: text(form, 'comment') })
}

export async function returnAnswer(_state: FormState, form: FormData): Promise<FormState> {
  return send('return-answer', form, { comment: text(form, 'comment') })
}

export async function withdrawAction(_state: FormState, form: FormData): Promise<FormState> {
  return send('withdraw-action', form, { reason: text(form, 'reason') })
}
