import { requirePositive } from '@/shared/statistics/argument-checks'
import { requireFinite } from '@/shared/statistics/reading-checks'
import { requireSpecificationLimits } from './specification-limits'
import type { SpecificationLimits } from './specification-limits'

/** Centre and spread of a process, in the unit of its readings. */
export type ProcessSpread = { mean: number; sigma: number }

/**
 * Indices by their customary letters; no units. Those that need a limit or a
 * target which is not given are absent.
 */
export type CapabilityIndices = {
  /** Tolerance ÷ 6σ: what a centred process could do. Needs both limits. */
  cp?: number
  /** Room below, and above, the mean ÷ 3σ. */
  cpl?: number
  cpu?: number
  /** The smaller of the two; negative when the mean is outside. */
  cpk: number
  /** As cp, with the distance from the target counted as spread. Needs both limits and a target. */
  cpm?: number
}

/**
 * Capability of a process against its limits. The same formulas give Pp and Ppk
 * when sigma is the standard deviation of all readings taken together. They say
 * nothing unless the process was stable while sampled, nor beyond the normal
 * distribution. Source: NIST/SEMATECH e-Handbook of Statistical Methods 6.1.6.
 */
export function capabilityIndices(
  limits: SpecificationLimits,
  { mean, sigma }: ProcessSpread,
): CapabilityIndices {
  requireSpecificationLimits(limits)
  requireFinite(mean, 'mean of the process')
  requirePositive(sigma, 'standard deviation of the process')
  const { lower, upper, target } = limits
  const cpl = lower === undefined ? undefined : (mean - lower) / (3 * sigma)
  const cpu = upper === undefined ? undefined : (upper - mean) / (3 * sigma)
  const cp = lower === undefined || upper === undefined ? undefined : (upper - lower) / (6 * sigma)
  return {
    cp,
    cpl,
    cpu,
    cpk: Math.min(cpl ?? Infinity, cpu ?? Infinity),
    cpm: cp === undefined || target === undefined ? undefined : cp / Math.hypot(1, (mean - target) / sigma),
  }
}
