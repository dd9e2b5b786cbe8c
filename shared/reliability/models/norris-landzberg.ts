import { fromMemory, published } from '@/shared/sources/provenance'
import type { ReliabilityModel } from './model'
import { requireCycle } from './thermal-cycle'
import type { ThermalCycle } from './thermal-cycle'

export interface NorrisLandzbergConstants extends ReliabilityModel {
  readonly key: string
  /** The solders it speaks of. */
  readonly family: 'tin-lead' | 'lead-free'
  /** What the constants were fitted with: cycles a day, or the dwells. */
  readonly slownessBy: 'frequency' | 'dwell'
  readonly swingExponent: number
  readonly slownessExponent: number
  /** Activation energy over Boltzmann's constant. */
  readonly temperatureK: number
}

const CAUTION =
  'Fitted to surface-mounted and flip-chip joints; for a pin in a plated hole it is an extrapolation, ' +
  'and fatigue of the plated barrel is another mechanism.'
const name = 'Norris–Landzberg'

/**
 * Constants in use. For tin–silver–copper no set is agreed: show the range.
 * K. C. Norris and A. H. Landzberg, IBM J. Res. Dev. 13 (1969) 266 is the model.
 */
export const NORRIS_LANDZBERG = [
  {
    key: 'tin-lead',
    family: 'tin-lead',
    slownessBy: 'frequency',
    name,
    edition: 'tin–lead',
    swingExponent: 1.9,
    slownessExponent: 1 / 3,
    temperatureK: 1414,
    source: published('FIDES Guide, annex A: exponent 1.9, 1/3, 0.122 eV (1414 K)'),
    caution: CAUTION,
  },
  {
    key: 'pan-2005',
    family: 'lead-free',
    slownessBy: 'dwell',
    name,
    edition: 'tin–silver–copper, Pan and others 2005',
    swingExponent: 2.65,
    slownessExponent: 0.136,
    temperatureK: 2185,
    source: fromMemory('N. Pan and others, SMTA International 2005: constants of tin-silver-copper'),
    caution: `${CAUTION} The ramp term of the paper is left out.`,
  },
  {
    key: 'lead-free-as-tin-lead',
    family: 'lead-free',
    slownessBy: 'frequency',
    name,
    edition: 'tin–silver–copper with the tin–lead constants',
    swingExponent: 1.9,
    slownessExponent: 1 / 3,
    temperatureK: 1414,
    source: fromMemory(
      'V. Vasudevan and X. Fan, ECTC 2008 (remark read in a secondary text, citation from memory)',
    ),
    caution: CAUTION,
  },
] as const satisfies readonly NorrisLandzbergConstants[]

/** Printed beside every factor, since texts disagree about it. */
export const SLOWNESS_DIRECTION =
  'A slower cycle does more damage, so a faster test accelerates less (FIDES Guide, equation 1.72; ' +
  'some texts print the inverse, which would multiply the factor).'

export interface CycleAcceleration {
  /** Service cycles that one test cycle stands for. */
  readonly factor: number
  readonly swingTerm: number
  readonly slownessTerm: number
  readonly temperatureTerm: number
  /** Whether slowness was calculated from the cycles a day or from the dwells. */
  readonly slownessBy: 'frequency' | 'dwell'
  readonly direction: string
  readonly model: ReliabilityModel
}

/**
 * How many cycles of use one cycle of test stands for:
 * (ΔTt/ΔTu)ⁿ · (fu/ft)ᵐ · exp(B(1/Tu − 1/Tt)), temperatures the hottest, in kelvin.
 * With `byDwell` the middle term is (dwell of test ÷ dwell of use)ᵐ, the form in
 * which the 2005 constants were fitted; it needs both dwells.
 * Throws RangeError for swings, rates or dwells that are not above zero.
 */
export function norrisLandzberg(
  constants: NorrisLandzbergConstants,
  { test, use }: { test: ThermalCycle; use: ThermalCycle },
  slownessBy: 'frequency' | 'dwell' = 'frequency',
): CycleAcceleration {
  const { maximumK: testK } = requireCycle(test)
  const { maximumK: useK } = requireCycle(use)
  const swingTerm = (test.swingK / use.swingK) ** constants.swingExponent
  const slownessTerm = relativeSlowness(test, use, slownessBy) ** constants.slownessExponent
  const temperatureTerm = Math.exp(constants.temperatureK * (1 / useK - 1 / testK))
  return {
    factor: swingTerm * slownessTerm * temperatureTerm,
    swingTerm,
    slownessTerm,
    temperatureTerm,
    slownessBy,
    direction: SLOWNESS_DIRECTION,
    model: constants,
  }
}

function relativeSlowness(test: ThermalCycle, use: ThermalCycle, by: 'frequency' | 'dwell'): number {
  if (by === 'frequency') return use.cyclesPerDay / test.cyclesPerDay
  if (test.dwellMin === undefined || use.dwellMin === undefined)
    throw new RangeError('The dwell of the test and of the use are both needed; one is missing.')
  return test.dwellMin / use.dwellMin
}
