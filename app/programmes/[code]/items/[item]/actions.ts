'use server'
import { itemAddress, startAddress } from '@/app/addresses'
import { commandInput } from '@/app/forms/form-action'
import type { FormState } from '@/app/forms/form-state'
import { submit } from '@/app/forms/submit'
import { numberTyped, text } from '@/app/forms/typed-text'
import { valueTyped } from '@/app/forms/value-typed'
import { previewRevision } from './preview-revision'

/** Saves a revision, or says what saving it would change. */
export async function reviseParameter(_state: FormState, form: FormData): Promise<FormState> {
  const [programme, parameter] = [text(form, 'programme'), text(form, 'parameter')]
  if (text(form, 'intent') === 'preview') return previewRevision(programme, parameter, valueTyped(form), form)
  if (text(form, 'notice')) return proposeValue(form)
  return submit(
    'revise-parameter',
    form,
    () => commandInput('revise-parameter', form, { value: valueTyped }),
    () =>
      text(form, 'from') === 'first values'
        ? startAddress(programme, text(form, 'next') || parameter)
        : `${itemAddress(programme, text(form, 'item'))}#${parameter}`,
  )
}

/** Puts the value into a change notice instead. */
const proposeValue = (form: FormData): Promise<FormState> =>
  submit('propose-change', form, () =>
    commandInput('propose-change', form, {
      change: () => ({
        kind: 'value',
        parameter: text(form, 'parameter'),
        value: valueTyped(form),
        seen: numberTyped(form, 'seen'),
      }),
    }),
  )
