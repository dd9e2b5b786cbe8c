'use server'
import { itemAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { submit, text, ticked } from '@/app/forms/submit'
import { DEPARTMENTS } from '@/shared/plan/department'

export async function addItem(_state: FormState, form: FormData): Promise<FormState> {
  const programme = text(form, 'programme')
  const toInput = () => ({
    programme,
    item: {
      stage: text(form, 'item.stage'),
      title: text(form, 'item.title'),
      asks: text(form, 'item.asks'),
      owner: text(form, 'item.owner'),
      approvers: DEPARTMENTS.filter((department) => ticked(form, `approves.${department}`)),
      evidence: text(form, 'item.evidence'),
    },
  })
  return submit('add-item', form, toInput, ({ result }) => itemAddress(programme, String(result['item'])))
}
