import { z } from 'zod'
import { costLines } from '@/lib/commands/cost-line-input'
import { jsonValue, line, optionalLine, wholeNumber } from '@/lib/commands/inputs'
import { demandBoxes, faultOfDemand } from '@/lib/commands/specification/checked-requirement'
import { checkedValue } from '@/lib/commands/specification/checked-value'
import { findParameter } from '@/shared/catalogue/standard-plan'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

const MOST_PER_MILLION = 'Defects expected lie between 0 and 1 000 000 per million joints.'

/** One way a choice can be made, as it is given to a study. */
export const alternativeInput = z.strictObject({
  name: line('The alternative’s name', 60),
  note: optionalLine('The note', 500),
  /** What it would specify, by parameter of any item; left out, it stays as it is today. */
  values: z.record(z.string(), jsonValue),
  limits: z.array(z.strictObject(demandBoxes)).max(20, 'It states at most 20 limits.').default([]),
  costs: costLines.default([]),
  defectsPerMillion: z
    .number({ error: 'The defects expected must be a number.' })
    .min(0, MOST_PER_MILLION)
    .max(1e6, MOST_PER_MILLION)
    .nullable()
    .default(null),
  /** Numbers of the answered actions it rests on. */
  actions: z
    .array(wholeNumber('The action', 1, 1_000_000))
    .max(20, 'It rests on at most 20 actions.')
    .default([]),
})
export type AlternativeInput = z.output<typeof alternativeInput>

/** Its values as the specification would hold them, its limits and answers looked at. Refused at `at`, its place in the form. */
export function checkedAlternative(
  given: AlternativeInput,
  at: string,
  answered: ReadonlySet<number>,
): AlternativeInput & { readonly values: Record<string, JsonValue> } {
  const unanswered = given.actions.find((number) => !answered.has(number))
  if (unanswered !== undefined)
    refuseAt(
      `${at}.actions`,
      `Action ${unanswered} is not answered in this programme; an alternative rests on answers only.`,
    )
  given.limits.forEach((demand, index) => {
    const fault = faultOfDemand(demand)
    if (fault) refuseAt(`${at}.limits.${index}.${fault.box}`, fault.message)
  })
  return { ...given, values: checkedValues(given.values, at) }
}

export function refuseAt(field: string, message: string): never {
  throw new Refused(message, { [field]: message })
}

/** Names are told apart without regard to capitals. */
export const sameName = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase()

function checkedValues(values: Readonly<Record<string, unknown>>, at: string): Record<string, JsonValue> {
  const entries = Object.entries(values).map(([key, value]) => {
    const place = `${at}.values.${key}`
    const parameter = findParameter(key)
    if (!parameter) refuseAt(place, `The specification has no parameter ${key}.`)
    return [key, checkedValue(parameter, value, place)] as const
  })
  return Object.fromEntries(entries)
}
