import { ageingMethod } from '@/shared/materials/ageing-methods'
import { TEST_FLUXES, TEST_SOLDERS } from '@/shared/materials/test-solders'
import { isSolderabilityMethod, methodName } from '@/shared/methods/test-methods'
import type { GoverningRequirement } from '@/shared/plan/requirement'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { Measured } from '@/shared/rules/finding'
import { measure } from '@/shared/rules/measure'
import { conditionsFor, type SpecifiedConditions, type StatedCondition } from './stated-conditions'

/** What the conditions of a test are held against; none are specified where they are undefined. */
export interface ConditionInputs {
  readonly conditions: SpecifiedConditions | undefined
  readonly temperatureTolerance: Pick<GoverningRequirement, 'value'>
}

/** One respect in which a test's conditions differ from the specified ones; what was found and asked by key or number. */
export type ConditionDifference =
  | { readonly of: 'specification'; readonly method: string }
  | {
      readonly of: 'alloy' | 'flux' | 'ageing'
      readonly found: string | undefined
      readonly asked: string
    }
  | {
      readonly of: 'bath'
      readonly foundC: number | undefined
      readonly askedC: number
      readonly toleranceK: number
    }

/**
 * In which respects a test's conditions differ from the specified ones. Empty when they are alike, or when conditions do not bear on the method.
 */
export function unlikeConditions(
  lot: Pick<Lot, 'kind' | 'part'>,
  test: LotTest,
  inputs: ConditionInputs,
): ConditionDifference[] {
  if (!isSolderabilityMethod(test.method)) return []
  const nearest = conditionOf(lot, test, inputs)
  return nearest
    ? differencesFrom(nearest, test, inputs.temperatureTolerance.value)
    : [{ of: 'specification', method: test.method }]
}

/** The stated condition that a test was made under, or comes nearest to, the first of several; undefined when none is stated for it. */
export function conditionOf(
  lot: Pick<Lot, 'kind' | 'part'>,
  test: LotTest,
  { conditions = [], temperatureTolerance }: ConditionInputs,
): StatedCondition | undefined {
  const stated = conditionsFor(conditions, test.method, lot)
  if (stated.length < 2) return stated[0]
  const { bathTemperatureC: foundC } = test.conditions
  const distance = (row: StatedCondition): number =>
    differencesFrom(row, test, temperatureTolerance.value).length * 1000 +
    (typeof foundC === 'number' ? Math.abs(foundC - row.bathTemperatureC) : 0)
  return stated.reduce((nearest, row) => (distance(nearest) <= distance(row) ? nearest : row))
}

function differencesFrom(
  row: StatedCondition,
  { conditions }: LotTest,
  toleranceK: number,
): ConditionDifference[] {
  const keys = (['alloy', 'flux', 'ageing'] as const).flatMap((of): ConditionDifference[] => {
    const [found, asked] = [conditions[of], row[of]]
    return found === asked ? [] : [{ of, found: typeof found === 'string' ? found : undefined, asked }]
  })
  const { bathTemperatureC } = conditions
  const foundC = typeof bathTemperatureC === 'number' ? bathTemperatureC : undefined
  const askedC = row.bathTemperatureC
  const near = foundC !== undefined && Math.abs(foundC - askedC) <= toleranceK
  return near ? keys : [...keys, { of: 'bath', foundC, askedC, toleranceK }]
}

const CONDITION_WORD = { alloy: 'solder', flux: 'flux', ageing: 'ageing' } as const

/** A difference as a phrase: "solder Sn60Pb40, not Sn63Pb37". */
export function differenceInWords(difference: ConditionDifference): string {
  switch (difference.of) {
    case 'specification':
      return `no conditions are specified for ${methodName(difference.method)}`
    case 'bath': {
      const { foundC, askedC, toleranceK } = difference
      if (foundC === undefined) return 'bath temperature not stated'
      return `bath at ${formatQuantity(foundC, '°C')}, not ${formatQuantity(askedC, '°C')} ± ${formatNumber(toleranceK)} K`
    }
    case 'alloy':
    case 'flux':
    case 'ageing':
      return `${CONDITION_WORD[difference.of]} ${named(difference.found)}, not ${named(difference.asked)}`
  }
}

/** The same as data. */
export function differenceMeasured(difference: ConditionDifference): Measured {
  switch (difference.of) {
    case 'specification':
      return { conditions: 'not specified' }
    case 'bath': {
      const { foundC, askedC, toleranceK } = difference
      return {
        bath: foundC === undefined ? 'not stated' : measure(foundC, '°C'),
        bathAsked: measure(askedC, '°C'),
        bathTolerance: measure(toleranceK, 'K'),
      }
    }
    case 'alloy':
    case 'flux':
    case 'ageing':
      return {
        [difference.of]: difference.found ?? 'not stated',
        [`${difference.of}Asked`]: difference.asked,
      }
  }
}

/** A solder, flux or ageing as people call it. */
function named(key: string | undefined): string {
  if (key === undefined) return 'not stated'
  const tables: Readonly<Record<string, { readonly label: string }>>[] = [TEST_SOLDERS, TEST_FLUXES]
  const label =
    tables.map((table) => table[key]?.label).find((found) => found !== undefined) ?? ageingMethod(key)?.label
  return label ?? key
}
