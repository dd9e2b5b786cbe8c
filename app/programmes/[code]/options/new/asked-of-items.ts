import type { ProgrammeView } from '@/lib/queries/programme-reader'
import type { ItemDefinition } from '@/shared/catalogue/item'
import type { ParameterShape } from '@/shared/plan/parameter'

/** As much of a parameter's declaration as can be sent to the browser, with the item that it belongs to. */
export interface AskedParameter {
  readonly key: string
  readonly label: string
  readonly help: string
  readonly shape: ParameterShape
  readonly item: string
}

/** What the boxes of an alternative are made from: parameters and limits of some items, and the values that stand. */
export interface AskedOfItems {
  readonly parameters: readonly AskedParameter[]
  readonly limits: readonly string[]
  readonly today: Readonly<Record<string, unknown>>
}

export function askedOfItems(view: ProgrammeView, items: readonly ItemDefinition[]): AskedOfItems {
  const parameters = items.flatMap(({ title, parameters: own }) =>
    own.map(({ key, label, help, shape }) => ({ key, label, help, shape, item: title })),
  )
  return {
    parameters,
    limits: items.flatMap(({ limits }) => limits.map(({ key }) => key)),
    today: Object.fromEntries(
      parameters.flatMap(({ key }) => {
        const value = view.state.facts.values.get(key)
        return value === undefined ? [] : [[key, value] as const]
      }),
    ),
  }
}
