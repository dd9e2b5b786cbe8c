import { dipAndLook } from './dip-and-look'
import { platedHoleRise } from './plated-hole-rise'
import { platingThickness } from './plating-thickness'
import { receivingCheck } from './receiving-check'
import { rotaryDip } from './rotary-dip'
import { solderFloat } from './solder-float'
import { wettingBalance } from './wetting-balance'
import type { TestMethod } from './test-method'
import { ownMember } from '@/shared/own-member'

/** Every way of testing a lot, by key. A new method is added here; the compiler asks for its picture and its rule. */
export const TEST_METHODS = {
  'dip-and-look': dipAndLook,
  'plated-hole-rise': platedHoleRise,
  'plating-thickness': platingThickness,
  'receiving-check': receivingCheck,
  'rotary-dip': rotaryDip,
  'solder-float': solderFloat,
  'wetting-balance': wettingBalance,
} as const satisfies Record<string, TestMethod>

export type TestMethodKey = keyof typeof TEST_METHODS

/** Methods whose result depends on solder, flux, bath temperature and ageing. */
export type SolderabilityMethod = {
  [K in TestMethodKey]: (typeof TEST_METHODS)[K]['ofSolderability'] extends true ? K : never
}[TestMethodKey]

/** In the order in which they are offered. */
const OFFERED: Readonly<Record<SolderabilityMethod, true>> = {
  'rotary-dip': true,
  'dip-and-look': true,
  'plated-hole-rise': true,
  'wetting-balance': true,
}
export const SOLDERABILITY_METHODS = Object.keys(OFFERED) as readonly SolderabilityMethod[]

export const isSolderabilityMethod = (key: string): key is SolderabilityMethod => Object.hasOwn(OFFERED, key)

export const needsInstrument = (key: string): boolean => ownMember(TEST_METHODS, key)?.byInstrument ?? true

/** The method's name for a sentence: "rotary dip". */
export const methodName = (key: string): string => (ownMember(TEST_METHODS, key)?.label ?? key).toLowerCase()
