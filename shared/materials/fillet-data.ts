import { computed, fromMemory } from '@/shared/sources/provenance'

/** Molten solder for capillary arithmetic: tin-lead in air under flux, conventional values. */
export const MOLTEN_SOLDER = {
  surfaceTensionNm: 0.4,
  densityKgM3: 8000,
  gravityMs2: 9.81,
  source: fromMemory('Wetting-balance convention: 0.40 N/m and 8000 kg/m³'),
} as const

/** √(2γ/(ρg)): joints much smaller than this have circular fillets. */
export const CAPILLARY_LENGTH_MM = {
  value: 3.193,
  source: computed('√(2 · 0.40 N/m/(8000 kg/m³ · 9.81 m/s²))'),
} as const
