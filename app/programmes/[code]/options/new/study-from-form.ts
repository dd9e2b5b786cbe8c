import { rowsFromForm, valueFromForm } from '@/app/forms/column-value'
import { number, numberOrNull, text } from '@/app/forms/submit'
import { findItem } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'

/** The command's input out of the form: what stands in every alternative's boxes, today's values included. */
export const studyFromForm = (form: FormData, count: number) => {
  const item = text(form, 'item')
  const parameters = findItem(item)?.parameters ?? []
  return {
    programme: text(form, 'programme'),
    item,
    title: text(form, 'title'),
    alternatives: Array.from({ length: count }, (_, position) => {
      const at = `alternatives.${position}`
      return {
        name: text(form, `${at}.name`),
        note: text(form, `${at}.note`),
        values: valuesOf(form, at, parameters),
        costPerBoard: number(form, `${at}.costPerBoard`) ?? 0,
        costOnce: number(form, `${at}.costOnce`) ?? 0,
        defectsPerMillion: numberOrNull(form, `${at}.defectsPerMillion`),
        actions: actionsTicked(form, at),
      }
    }),
  }
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
