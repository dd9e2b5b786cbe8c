import { requireCount, requireOneOf, requireProbability } from '../argument-checks'
import { requireFinite, requireReadings } from '../reading-checks'
import { noncentralTSf } from '../distributions/noncentral-t'
import { normalQuantile } from '../distributions/normal'
import { mean, standardDeviation } from '../sample-moments'
import { readPlanTable } from './plan-table'
import { VARIABLES_K } from './variables-plan-table'

/** The letters of Z1.9, which are not those of the attribute tables. */
export const VARIABLES_LETTERS = [
  ...(['B', 'C', 'D', 'E', 'F', 'G', 'H'] as const),
  ...(['I', 'J', 'K', 'L', 'M', 'N', 'P'] as const),
] as const
export type VariablesLetter = (typeof VARIABLES_LETTERS)[number]

/** From lenient to strict the columns run right to left; tightened inspection moves one to the left. */
export const VARIABLES_LIMITS = [
  ...(['0.10', '0.15', '0.25', '0.40', '0.65'] as const),
  ...(['1.0', '1.5', '2.5', '4.0', '6.5', '10'] as const),
] as const
export type VariablesLimit = (typeof VARIABLES_LIMITS)[number]

/** Accept when the mean lies at least k sample standard deviations inside the limit. */
export interface VariablesPlan {
  sampleSize: number
  acceptabilityConstant: number
  /** How the constant was come by: read as printed, or computed from the M table to about 0.01. */
  how: 'read' | 'computed'
}

/**
 * The variables plan (s method, one specification limit) for a Z1.9 code letter.
 *
 * Errors: RangeError for an unknown letter, limit or severity. Source: ANSI/ASQ Z1.9 table B-1.
 */
export function variablesPlan(
  letter: VariablesLetter,
  limit: VariablesLimit,
  severity: 'normal' | 'tightened',
): VariablesPlan {
  requireOneOf(severity, 'severity of inspection', ['normal', 'tightened'])
  const columns = ['tightest', ...VARIABLES_LIMITS]
  const normalColumn = columns.indexOf(limit)
  const column = columns[severity === 'tightened' ? normalColumn - 1 : normalColumn]!
  const { sampleSize, text } = readPlanTable(VARIABLES_K, letter, column)
  const computed = text.startsWith('~')
  return {
    sampleSize,
    acceptabilityConstant: Number(computed ? text.slice(1) : text),
    how: computed ? 'computed' : 'read',
  }
}

/** One limit of a specification. */
export interface SpecificationLimit {
  side: 'upper' | 'lower'
  value: number
}

export interface VariablesJudgement {
  mean: number
  standardDeviation: number
  /** Distance of the mean from the limit in sample standard deviations; below zero outside. */
  qualityIndex: number
  accepted: boolean
}

/**
 * Judges a lot by the readings of its sample against one limit. Normal readings are assumed: look at
 * them first. Two limits at once need the M form of the standard, which is not offered.
 *
 * Units: those of the readings. Errors: RangeError when the readings are not as many as the plan
 * asks for, or show no spread while the mean lies just on the limit.
 * Source: ANSI/ASQ Z1.9 section B, form 1; MIL-STD-414 (1957) section B.
 */
export function judgeVariables(
  plan: Pick<VariablesPlan, 'sampleSize' | 'acceptabilityConstant'>,
  readings: readonly number[],
  limit: SpecificationLimit,
): VariablesJudgement {
  requireReadings(readings, 'readings', 2)
  requireFinite(limit.value, 'specification limit')
  requireFinite(plan.acceptabilityConstant, 'acceptability constant')
  if (readings.length !== plan.sampleSize) {
    throw new RangeError(`The plan asks for ${plan.sampleSize} readings; ${readings.length} are given.`)
  }
  const centre = mean(readings)
  const spread = standardDeviation(readings)
  const inside = limit.side === 'upper' ? limit.value - centre : centre - limit.value
  if (spread === 0 && inside === 0) {
    throw new RangeError('All readings lie just on the limit: a finer instrument is needed to judge the lot.')
  }
  const qualityIndex = inside / spread
  const accepted = qualityIndex >= plan.acceptabilityConstant
  return { mean: centre, standardDeviation: spread, qualityIndex, accepted }
}

/**
 * Probability that the plan accepts a normal process with this fraction beyond the limit.
 *
 * Units: fractions. Errors: RangeError unless the sample is 2 or more and the fraction lies in 0 … 1.
 * Source: √n × quality index is noncentral t with n − 1 degrees of freedom (ISO 3951-1; definition).
 */
export function acceptanceByVariables(
  { sampleSize, acceptabilityConstant }: Pick<VariablesPlan, 'sampleSize' | 'acceptabilityConstant'>,
  fractionDefective: number,
): number {
  requireCount(sampleSize, 'sample size', 2)
  requireFinite(acceptabilityConstant, 'acceptability constant')
  requireProbability(fractionDefective, 'fraction defective')
  if (fractionDefective === 0 || fractionDefective === 1) return 1 - fractionDefective
  const root = Math.sqrt(sampleSize)
  const noncentrality = -normalQuantile(fractionDefective) * root
  return noncentralTSf(acceptabilityConstant * root, { degreesOfFreedom: sampleSize - 1, noncentrality })
}
