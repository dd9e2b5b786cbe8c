'use server'
import { commandInput } from '@/app/forms/form-action'
import { typedIn, type FormState } from '@/app/forms/form-state'
import { submit } from '@/app/forms/submit'
import { text } from '@/app/forms/typed-text'
import { countAsked } from './count-asked'
import { alternativesFromForm } from './alternatives-from-form'

/** Opens the study, or shows the form again with one alternative more or fewer. */
export async function openStudy(_state: FormState, form: FormData): Promise<FormState> {
  const count = countAsked(text(form, 'count'))
  const intent = text(form, 'intent')
  if (intent === 'more' || intent === 'fewer') {
    const next = countAsked(String(intent === 'more' ? count + 1 : count - 1))
    return { fields: {}, typed: { ...typedIn(form), count: String(next) } }
  }
  return submit('open-option-study', form, () =>
    commandInput('open-option-study', form, { alternatives: () => alternativesFromForm(form, count) }),
  )
}
