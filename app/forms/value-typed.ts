import { rowsFromForm, valueFromForm } from '@/app/forms/column-value'
import { text } from '@/app/forms/typed-text'
import { findParameter } from '@/shared/catalogue/standard-plan'

/** A parameter's value out of the form its declaration gave. */
export function valueTyped(form: FormData): unknown {
  const parameter = findParameter(text(form, 'parameter'))
  if (!parameter) return null
  const { shape } = parameter
  return shape.kind === 'field'
    ? (valueFromForm(form, 'value', shape.column) ?? null)
    : rowsFromForm(form, 'value', shape.columns)
}
