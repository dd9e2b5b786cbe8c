import { rowsFromForm, valueFromForm } from '@/app/forms/column-value'
import { numberTyped, text } from '@/app/forms/typed-text'
import { findItem } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'

/** What stands in every alternative's boxes, today's values included; of what it costs, nothing typed means nothing. */
export function alternativesFromForm(form: FormData, count: number) {
  const parameters = findItem(text(form, 'item'))?.parameters ?? []
  return Array.from({ length: count }, (_, position) => {
    const at = `alternatives.${position}`
    return {
      name: text(form, `${at}.name`),
      note: text(form, `${at}.note`),
      values: valuesOf(form, at, parameters),
      costPerBoard: numberTyped(form, `${at}.costPerBoard`) ?? 0,
      costOnce: numberTyped(form, `${at}.costOnce`) ?? 0,
      defectsPerMillion: numberTyped(form, `${at}.defectsPerMillion`) ?? null,
      actions: actionsTicked(form, at),
    }
  })
}

/** A box or table left empty leaves the value as it is today. */
const valuesOf = (form: FormData, at: string, parameters: readonly Parameter[]): Record<string, unknown> =>
  Object.fromEntries(
    parameters.flatMap(({ key, shape }): (readonly [string, unknown])[] => {
      const name = `${at}.values.${key}`
      if (shape.kind === 'field') {
        const value = valueFromForm(form, name, shape.column)
        return value === undefined ? [] : [[key, value]]
      }
      const rows = rowsFromForm(form, name, shape.columns)
      return rows.length === 0 ? [] : [[key, rows]]
    }),
  )

const actionsTicked = (form: FormData, at: string): number[] =>
  [...form.keys()]
    .filter((name) => name.startsWith(`${at}.actions.`))
    .map((name) => Number(name.slice(`${at}.actions.`.length)))
