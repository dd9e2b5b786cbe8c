import { computed, fromMemory } from '@/shared/sources/provenance'

/** Densities, g/cm³. */
export const DENSITY_GCM3 = {
  gold: 19.3,
  tin: 7.287,
  lead: 11.34,
  copper: 8.96,
  cu6sn5: 8.28,
} as const

/**
 * Micrometres of tin that one micrometre of Cu₆Sn₅ takes up: mass share of tin
 * (5 · 118.71 of 974.83) times 8.28/7.287.
 */
export const TIN_PER_CU6SN5 = {
  value: 0.692,
  source: computed('Stoichiometry of Cu₆Sn₅ with densities 8.28 and 7.287 g/cm³'),
} as const

/** Volume share of tin in a tin-lead coating, from its mass share and the two densities. */
export function tinVolumeShare(tinMassPct: number): number {
  if (!(tinMassPct >= 0 && tinMassPct <= 100)) throw new RangeError('A mass share lies between 0 and 100 %.')
  const tin = tinMassPct / DENSITY_GCM3.tin
  return tin / (tin + (100 - tinMassPct) / DENSITY_GCM3.lead)
}

/** Density of gold for the embrittlement calculation. */
export const GOLD_SOURCE = fromMemory('CRC Handbook of Chemistry and Physics: density of gold 19.3 g/cm³')
