import { ageingMethod } from '@/shared/materials/ageing-methods'
import { TEST_FLUXES, TEST_SOLDERS } from '@/shared/materials/test-solders'
import { memory } from '@/shared/memo'
import { ownMember } from '@/shared/own-member'
import { isSolderabilityMethod } from '@/shared/methods/test-methods'
import type { ValueOf } from '@/shared/plan/parameter'
import type { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { formatQuantity } from '@/shared/quantity/format'
import { partKey } from '@/shared/records/lot-identity'

/** The conditions a programme specifies for its solderability tests. */
export type SpecifiedConditions = ValueOf<typeof testConditions>
/** One stated condition: a demand of its own on every lot it is stated for. */
export type StatedCondition = SpecifiedConditions[number]

/** What tells one stated condition from another. */
const ASPECTS = ['ageing', 'bathTemperatureC', 'alloy', 'flux'] as const

/**
 * The conditions under each of which a method is to try a lot: those stated for
 * its part, else those for its kind, else those stated for any. Empty where
 * conditions do not bear on the method, or none is stated for the lot.
 */
export const conditionsFor = (
  specified: SpecifiedConditions,
  method: string,
  { kind, part }: { readonly kind: string; readonly part: string },
): readonly StatedCondition[] =>
  known(specified, [method, kind, part], () => {
    if (!isSolderabilityMethod(method)) return []
    const fitting = specified.filter(
      (row) =>
        row.method === method &&
        (row.kind === undefined || row.kind === kind) &&
        (row.part === undefined || partKey(row.part) === partKey(part)),
    )
    const closest = Math.max(...fitting.map(closeness))
    return fitting
      .filter((row) => closeness(row) === closest)
      .filter((row, at, rows) => rows.findIndex((other) => isSameCondition(row, other)) === at)
  })
const known = memory<SpecifiedConditions, readonly StatedCondition[]>(60)

const closeness = ({ kind, part }: StatedCondition): number =>
  part !== undefined ? 2 : kind !== undefined ? 1 : 0

const isSameCondition = (one: StatedCondition, other: StatedCondition): boolean =>
  ASPECTS.every((aspect) => one[aspect] === other[aspect])

/** What a stated condition is told by among those stated beside it; empty when it stands alone. */
export const conditionAbout = (
  condition: StatedCondition | undefined,
  among: readonly StatedCondition[],
): Readonly<Record<string, string>> =>
  condition === undefined
    ? {}
    : Object.fromEntries(
        ASPECTS.filter((aspect) => among.some((other) => other[aspect] !== condition[aspect])).map(
          (aspect) => [aspect, String(condition[aspect])],
        ),
      )

/** The same as a phrase: "after steam, 8 h"; empty when it stands alone. */
export const conditionInWords = (
  condition: StatedCondition | undefined,
  among: readonly StatedCondition[],
): string => toldInWords(conditionAbout(condition, among))

/** What tells a condition from others, as a part of a finding holds it, as a phrase; empty when nothing does. */
export const toldInWords = (told: Readonly<Record<string, string>>): string =>
  ASPECTS.flatMap((aspect) => (told[aspect] === undefined ? [] : ASPECT_WORDS[aspect](told[aspect]))).join(
    ', ',
  )

const ASPECT_WORDS: Readonly<Record<(typeof ASPECTS)[number], (value: string) => string>> = {
  ageing: (key) => (key === 'none' ? 'as received' : `after ${firstLower(ageingMethod(key)?.label ?? key)}`),
  bathTemperatureC: (value) => `at ${formatQuantity(Number(value), '°C')}`,
  alloy: (key) => `in ${ownMember(TEST_SOLDERS, key)?.label ?? key}`,
  flux: (key) => `with ${firstLower(ownMember(TEST_FLUXES, key)?.label ?? key)}`,
}

const firstLower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)
