'use server'
import { gateAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'
import type { Stage } from '@/shared/plan/stage'

export async function signGate(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const stage = text(form, 'stage')
  const toInput = () => ({
    programme,
    stage,
    department: text(form, 'department'),
    digest: text(form, 'digest'),
  })
  return submit('sign-gate', form, toInput, () => gateAddress(programme, stage as Stage))
}
