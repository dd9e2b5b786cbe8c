import { rowsFromForm, valueFromForm } from '@/app/forms/column-value'
import { numberTyped, text } from '@/app/forms/typed-text'
import { findItem } from '@/shared/catalogue/standard-plan'
import { COST_COLUMNS } from '@/shared/cost/cost-line'
import { STATED_LIMIT_COLUMNS } from '@/shared/gate/stated-limit-columns'
import type { Parameter } from '@/shared/plan/parameter'

/** What stands in every alternative's boxes, today's values included. */
export const alternativesFromForm = (form: FormData, count: number) =>
  Array.from({ length: count }, (_, position) => alternativeFromForm(form, `alternatives.${position}`))

/** One alternative, by its place in the form; an amount left empty is not known. */
export const alternativeFromForm = (form: FormData, at: string) => ({
  name: text(form, `${at}.name`),
  note: text(form, `${at}.note`),
  values: valuesOf(form, at, parametersAsked(form)),
  limits: rowsFromForm(form, `${at}.limits`, STATED_LIMIT_COLUMNS),
  costs: rowsFromForm(form, `${at}.costs`, COST_COLUMNS),
  defectsPerMillion: numberTyped(form, `${at}.defectsPerMillion`) ?? null,
  actions: actionsTicked(form, at),
})

/** The parameters of the items that the form is about. */
const parametersAsked = (form: FormData): Parameter[] =>
  text(form, 'items')
    .split(' ')
    .flatMap((key) => findItem(key)?.parameters ?? [])

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
