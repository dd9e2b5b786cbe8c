import { GROWTH_LAWS, PEAK_FACTOR, type GrowthLaw } from '@/shared/materials/growth-laws'
import { TIN_PER_CU6SN5 } from '@/shared/materials/metals'

const ABSOLUTE_ZERO_C = -273.15

/** Growth constant k of x² = x₀² + k·t, µm²/h, at a temperature in °C. */
export function growthConstant({ lnFactor, perKelvin }: GrowthLaw, temperatureC: number): number {
  if (!(temperatureC > ABSOLUTE_ZERO_C)) throw new RangeError('A temperature lies above −273.15 °C.')
  return Math.exp(lnFactor - perKelvin / (temperatureC - ABSOLUTE_ZERO_C))
}

export interface GrowthBand {
  /** The slowest growth constant of all sets, and the fastest of those that may decide at the peaks, µm²/h. */
  readonly slowest: number
  /** The fit in circulation, to compare with. */
  readonly fitted: number
  readonly fastest: number
}

/**
 * The spread of growth constants at a store temperature: the fastest whose author
 * can be followed, at the peaks of its layer; the slowest of all; and the fit in circulation between them.
 */
export function growthBand(temperatureC: number): GrowthBand {
  const laws: readonly GrowthLaw[] = Object.values(GROWTH_LAWS)
  const at = (some: readonly GrowthLaw[]): number[] => some.map((law) => growthConstant(law, temperatureC))
  return {
    slowest: Math.min(...at(laws)),
    fitted: growthConstant(GROWTH_LAWS.fitted, temperatureC),
    fastest: PEAK_FACTOR.value ** 2 * Math.max(...at(laws.filter(({ attributed }) => attributed))),
  }
}

/** Compound after some hours, µm: √(x₀² + k·t). */
export function compoundUm(growthUm2h: number, hours: number, firstUm: number): number {
  if (!(growthUm2h >= 0 && hours >= 0 && firstUm >= 0)) {
    throw new RangeError('A growth constant, a time and a first thickness must not be negative.')
  }
  return Math.sqrt(firstUm ** 2 + growthUm2h * hours)
}

export interface Coat {
  readonly coatingUm: number
  /** Volume share of tin in the coating, between 0 and 1. */
  readonly tinShare: number
  /** Compound there when the coating is made, µm. */
  readonly firstUm: number
}

/**
 * Coating left that still has the tin it was made with, µm: what the compound
 * has drawn its tin from is not counted. Each µm of Cu₆Sn₅ takes up 0.692 µm
 * of tin, so h − 0.692·x/s; zero when the tin is used up.
 */
export function coatingLeftUm({ coatingUm, tinShare }: Coat, compound: number): number {
  if (!(coatingUm >= 0)) throw new RangeError('A coating has a thickness that is not negative.')
  if (!(tinShare > 0 && tinShare <= 1))
    throw new RangeError('The share of tin lies above 0 and at most at 1.')
  return Math.max(0, coatingUm - (TIN_PER_CU6SN5.value * compound) / tinShare)
}

/** Hours until so much coating is left; zero when there is less from the start. */
export function hoursUntilLeft(coat: Coat, leftUm: number, growthUm2h: number): number {
  if (!(growthUm2h > 0)) throw new RangeError('A growth constant is greater than zero.')
  const compound = ((coat.coatingUm - leftUm) * coat.tinShare) / TIN_PER_CU6SN5.value
  if (!(compound > coat.firstUm)) return 0
  return (compound ** 2 - coat.firstUm ** 2) / growthUm2h
}

/** The coating that leaves so much after some hours, µm. */
export const coatingNeededUm = (
  { tinShare, firstUm }: Omit<Coat, 'coatingUm'>,
  leftUm: number,
  growthUm2h: number,
  hours: number,
): number => leftUm + (TIN_PER_CU6SN5.value * compoundUm(growthUm2h, hours, firstUm)) / tinShare
