import { fromMemory } from '@/shared/sources/provenance'
import { requireNotNegative, requirePositive } from '@/shared/statistics/argument-checks'
import type { ReliabilityModel } from './model'

/** Life falls with the swing to this power. */
export const COFFIN_MANSON: ReliabilityModel & { readonly swingExponent: number } = {
  name: 'Coffin–Manson',
  edition: 'tin–lead, exponent 1.9',
  swingExponent: 1.9,
  source: fromMemory('Coffin 1954, Manson 1953 (form from memory; exponent as in the FIDES Guide)'),
  caution: 'Counts the swing alone: neither the time at temperature nor how hot it gets.',
}

export interface SwingCount {
  readonly swingK: number
  readonly cycles: number
}

/**
 * Cycles of one swing that do the damage of a mixture of swings:
 * Σ cycles · (swing ÷ reference)ⁿ. Source: Palmgren–Miner sum over Coffin–Manson.
 */
export function equivalentCycles(
  mixture: readonly SwingCount[],
  referenceSwingK: number,
  swingExponent: number = COFFIN_MANSON.swingExponent,
): number {
  requirePositive(referenceSwingK, 'swing of reference')
  requirePositive(swingExponent, 'exponent of the swing')
  return mixture.reduce((sum, { swingK, cycles }) => {
    requireNotNegative(swingK, 'swing of temperature')
    requireNotNegative(cycles, 'number of cycles')
    return sum + cycles * (swingK / referenceSwingK) ** swingExponent
  }, 0)
}
