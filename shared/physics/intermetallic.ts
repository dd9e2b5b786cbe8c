import { FIT_THICKNESS_FACTOR, GROWTH_LAWS, type GrowthLaw } from '@/shared/materials/growth-laws'
import { TIN_PER_CU6SN5 } from '@/shared/materials/metals'

const ABSOLUTE_ZERO_C = -273.15
/** A month as a twelfth of 8760 hours. */
export const HOURS_PER_MONTH = 730

/** Growth constant k of x² = x₀² + k·t, µm²/h, at a temperature in °C. */
export function growthConstant({ lnFactor, perKelvin }: GrowthLaw, temperatureC: number): number {
  if (!(temperatureC > ABSOLUTE_ZERO_C)) throw new RangeError('A temperature lies above −273.15 °C.')
  return Math.exp(lnFactor - perKelvin / (temperatureC - ABSOLUTE_ZERO_C))
}

export interface GrowthBand {
  /** The slowest and the fastest growth constant that the published data leave, µm²/h. */
  readonly slowest: number
  /** The fit by itself. */
  readonly fitted: number
  readonly fastest: number
}

/**
 * The spread of growth constants at a store temperature: the fit with its own
 * factor of two in thickness either way (four in the constant), the rate measured on electroplated
 * tin, and the highest published activation energy.
 */
export function growthBand(temperatureC: number): GrowthBand {
  const fitted = growthConstant(GROWTH_LAWS.fitted, temperatureC)
  const others = [GROWTH_LAWS['electroplated-tin'], GROWTH_LAWS['highest-energy']].map((law) =>
    growthConstant(law, temperatureC),
  )
  const spread = FIT_THICKNESS_FACTOR.value ** 2
  return {
    slowest: Math.min(fitted / spread, ...others),
    fitted,
    fastest: Math.max(fitted * spread, ...others),
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
