'use server'
import { revalidatePath } from 'next/cache'
import { redirect } from 'next/navigation'
import { signListAddress } from '@/app/addresses'
import { commandInput } from '@/app/forms/form-action'
import type { FormState } from '@/app/forms/form-state'
import { send } from '@/app/forms/submit'
import { text } from '@/app/forms/typed-text'
import { STAGES } from '@/shared/plan/stage'

const TICKED = 'items.'

/** Signs the ticked items; refused, the list comes back as it stands now, so that what changed can be read. */
export async function approveItems(_state: FormState, form: FormData): Promise<FormState> {
  const outcome = await send('approve-items', form, () =>
    commandInput('approve-items', form, { items: tickedItems }),
  )
  if ('fields' in outcome) {
    if (Object.keys(outcome.fields).length > 0) revalidatePath('/', 'layout')
    return outcome
  }
  revalidatePath('/', 'layout')
  redirect(
    signListAddress(
      text(form, 'programme'),
      STAGES.find((stage) => stage === text(form, 'stage')),
    ),
  )
}

const tickedItems = (form: FormData) =>
  [...form.keys()]
    .filter((name) => name.startsWith(TICKED))
    .map((name) => name.slice(TICKED.length))
    .map((item) => ({
      item,
      digest: text(form, `${TICKED}${item}`),
      confirms: text(form, `confirms.${item}`) === 'yes',
    }))
