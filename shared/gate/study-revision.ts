import { sameValue } from '@/shared/plan/same-value'
import type { JsonValue } from '@/shared/trail/canonical-json'
import { openedWith, type AlternativeContent, type Deed, type OptionAlternative } from './option-alternative'

/*
 * What an open study's alternatives become when one is added, changed or
 * withdrawn: the same for the command that writes it and for the verification
 * that plays its entry again.
 */

type Values = Readonly<Record<string, JsonValue>>

/** Values written down for the alternatives that said nothing of a parameter compared from now on. */
type WrittenDown = Values

export const withAdded = (
  alternatives: readonly OptionAlternative[],
  content: AlternativeContent,
  written: WrittenDown,
  deed: Deed,
): OptionAlternative[] => [
  ...alternatives.map((other) => sayingToo(other, written)),
  { ...openedWith(content), added: deed },
]

export const withChanged = (
  alternatives: readonly OptionAlternative[],
  name: string,
  content: AlternativeContent,
  written: WrittenDown,
  deed: Deed,
): OptionAlternative[] =>
  alternatives.map((one) =>
    one.name === name
      ? { ...one, ...content, drawsOnAnswers: true, changed: [...one.changed, deed] }
      : sayingToo(one, written),
  )

export const withWithdrawn = (
  alternatives: readonly OptionAlternative[],
  name: string,
  deed: Deed,
): OptionAlternative[] => alternatives.map((one) => (one.name === name ? { ...one, withdrawn: deed } : one))

const sayingToo = (one: OptionAlternative, written: WrittenDown): OptionAlternative => ({
  ...one,
  values: { ...written, ...one.values },
})

/** How often a study was written, from 1 on: whoever changes or adopts says which one they read. */
export const studyRevision = (alternatives: readonly OptionAlternative[]): number =>
  alternatives.reduce(
    (count, { added, changed, withdrawn }) => count + (added ? 1 : 0) + changed.length + (withdrawn ? 1 : 0),
    1,
  )

/** The alternatives that still stand for choice. */
export const standing = <One extends Pick<OptionAlternative, 'withdrawn'>>(alternatives: readonly One[]) =>
  alternatives.filter(({ withdrawn }) => !withdrawn)

/**
 * What one more alternative, or a changed one, says beside the others: every
 * parameter that the study compares, today's value where it names none itself.
 * A parameter compared from now on is written down for the others, as it is today.
 */
export function comparedWith(
  others: readonly Pick<OptionAlternative, 'values'>[],
  values: Values,
  today: ReadonlyMap<string, unknown>,
): { readonly values: Values; readonly written: Values } {
  const before = new Set(others.flatMap((other) => Object.keys(other.values)))
  const more = Object.keys(values).filter(
    (key) => !before.has(key) && !sameValue(values[key], today.get(key)),
  )
  const todays = (keys: readonly string[]): Values =>
    Object.fromEntries(
      keys.flatMap((key) => {
        const value = today.get(key) as JsonValue | undefined
        return value === undefined ? [] : [[key, value] as const]
      }),
    )
  const compared = [...before, ...more]
  const named = Object.fromEntries(Object.entries(values).filter(([key]) => compared.includes(key)))
  return { values: { ...todays(compared), ...named }, written: todays(more) }
}
