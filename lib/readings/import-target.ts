import { INSTANT_FIELD, TIME_OF_DAY_FIELD, fieldsOf, type ReadingField } from '@/lib/readings/reading-field'
import type { Characteristic } from '@/shared/records/characteristic'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import type { TestMethod } from '@/shared/methods/test-method'
import { TEST_METHODS, type TestMethodKey } from '@/shared/methods/test-methods'
import { ownMember } from '@/shared/own-member'

/** What a file of readings is imported into: a log, or a new test of a lot. */
export type ImportTarget =
  | { readonly kind: 'log'; readonly code: string; readonly characteristic: Characteristic }
  | {
      readonly kind: 'lot'
      readonly code: string
      readonly method: TestMethod & { readonly key: TestMethodKey }
    }

export const logTarget = (code: string, characteristic: string): ImportTarget => ({
  kind: 'log',
  code,
  characteristic: CHARACTERISTICS[characteristic as CharacteristicKey],
})

/** Undefined when there is no such method. */
export function lotTarget(code: string, method: string): ImportTarget | undefined {
  const known: TestMethod | undefined = ownMember(TEST_METHODS, method)
  return known && { kind: 'lot', code, method: { ...known, key: method as TestMethodKey } }
}

/** The fields a file has to fill. */
export const targetFields = (target: ImportTarget): ReadingField[] =>
  target.kind === 'log'
    ? [INSTANT_FIELD, TIME_OF_DAY_FIELD, ...fieldsOf(target.characteristic.columns)]
    : fieldsOf(target.method.columns)
