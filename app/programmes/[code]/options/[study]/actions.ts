'use server'
import { optionAddress } from '@/app/addresses'
import type { FormState } from '@/app/forms/form-state'
import { submit, text } from '@/app/forms/submit'

/** Adopts an alternative as the person saw it: with the revisions that the page was judged on. */
export async function adoptOption(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, study] = [text(form, 'programme'), Number(text(form, 'study'))]
  const seen = [...form.keys()].filter((name) => name.startsWith('seen.'))
  const toInput = () => ({
    programme,
    study,
    alternative: text(form, 'alternative'),
    seen: Object.fromEntries(seen.map((name) => [name.slice('seen.'.length), Number(text(form, name))])),
    reason: text(form, 'reason'),
  })
  return submit('adopt-option', form, toInput, () => optionAddress(programme, study))
}
