import { dipAndLook } from './dip-and-look'
import { platedHoleRise } from './plated-hole-rise'
import { platingThickness } from './plating-thickness'
import { receivingCheck } from './receiving-check'
import { rotaryDip } from './rotary-dip'
import { solderFloat } from './solder-float'
import { wettingBalance } from './wetting-balance'
import type { TestMethod } from './test-method'

/** Every way of testing a lot, by key. A new method is added here and nowhere else. */
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
export const SOLDERABILITY_METHODS = [
  'rotary-dip',
  'dip-and-look',
  'plated-hole-rise',
  'wetting-balance',
] as const satisfies readonly TestMethodKey[]
export type SolderabilityMethod = (typeof SOLDERABILITY_METHODS)[number]

export const isSolderabilityMethod = (key: string): key is SolderabilityMethod =>
  (SOLDERABILITY_METHODS as readonly string[]).includes(key)

/** Methods made by eye and document alone; every other reading is worth what its instrument is. */
const WITHOUT_INSTRUMENT: readonly string[] = ['receiving-check'] satisfies TestMethodKey[]

export const needsInstrument = (key: string): boolean => !WITHOUT_INSTRUMENT.includes(key)

/** The method's name for a sentence: "rotary dip". */
export const methodName = (key: string): string =>
  (TEST_METHODS[key as TestMethodKey]?.label ?? key).toLowerCase()
