import type { Source } from '@/shared/sources/source'

/** The metals a solder bath is analysed for, beside tin. */
export const CONTAMINANTS = {
  copper: { symbol: 'Cu', label: 'Copper', column: 'copperPct' },
  gold: { symbol: 'Au', label: 'Gold', column: 'goldPct' },
  cadmium: { symbol: 'Cd', label: 'Cadmium', column: 'cadmiumPct' },
  zinc: { symbol: 'Zn', label: 'Zinc', column: 'zincPct' },
  aluminium: { symbol: 'Al', label: 'Aluminium', column: 'aluminiumPct' },
  antimony: { symbol: 'Sb', label: 'Antimony', column: 'antimonyPct' },
  iron: { symbol: 'Fe', label: 'Iron', column: 'ironPct' },
  arsenic: { symbol: 'As', label: 'Arsenic', column: 'arsenicPct' },
  bismuth: { symbol: 'Bi', label: 'Bismuth', column: 'bismuthPct' },
  silver: { symbol: 'Ag', label: 'Silver', column: 'silverPct' },
  nickel: { symbol: 'Ni', label: 'Nickel', column: 'nickelPct' },
  lead: { symbol: 'Pb', label: 'Lead', column: 'leadPct' },
} as const
export type Contaminant = keyof typeof CONTAMINANTS

/** The five metals whose sum is limited too in tin-lead assembly baths. */
export const SUMMED_CONTAMINANTS = ['copper', 'gold', 'cadmium', 'zinc', 'aluminium'] as const

/** Most a used bath may hold, % by mass, as one edition prints it. */
export interface BathLimits {
  readonly label: string
  readonly family: 'tin-lead' | 'lead-free'
  /** Of a tinning pot, which may hold more; else of a bath that makes joints. */
  readonly forPreconditioning?: true
  readonly max: Readonly<Partial<Record<Contaminant, number>>>
  /** Most that the five summed metals may amount to together. */
  readonly sumMax?: number
  readonly source: Source
}

/**
 * Limits of used assembly baths (wave and joint-making pots) and of
 * preconditioning pots (tinning), by edition. Not to be mixed with the limits
 * of newly supplied alloy.
 */
export const BATH_LIMITS = {
  'j-std-001c-assembly': {
    label: 'J-STD-001C / DOD-STD-2000A, assembly, tin-lead',
    family: 'tin-lead',
    max: {
      copper: 0.3,
      gold: 0.2,
      cadmium: 0.005,
      zinc: 0.005,
      aluminium: 0.008,
      antimony: 0.5,
      iron: 0.02,
      arsenic: 0.03,
      bismuth: 0.25,
      silver: 0.1,
      nickel: 0.01,
    },
    sumMax: 0.4,
    source: {
      cite: 'J-STD-001C / DOD-STD-2000A, solder contamination limits, assembly, printed by AIM Solder, “Solder analysis”',
      how: 'published',
    },
  },
  'mil-std-2000a-assembly': {
    label: 'MIL-STD-2000A, assembly, tin-lead',
    family: 'tin-lead',
    max: {
      copper: 0.3,
      gold: 0.2,
      cadmium: 0.005,
      zinc: 0.005,
      aluminium: 0.006,
      antimony: 0.5,
      iron: 0.02,
      arsenic: 0.03,
      bismuth: 0.25,
      silver: 0.1,
      nickel: 0.01,
    },
    sumMax: 0.4,
    source: { cite: 'MIL-STD-2000A, solder contamination limits, assembly', how: 'from memory' },
  },
  'j-std-001c-preconditioning': {
    label: 'J-STD-001C / DOD-STD-2000A, preconditioning (tinning pots), tin-lead',
    family: 'tin-lead',
    forPreconditioning: true,
    max: {
      copper: 0.75,
      gold: 0.5,
      cadmium: 0.01,
      zinc: 0.008,
      aluminium: 0.008,
      antimony: 0.5,
      iron: 0.02,
      arsenic: 0.03,
      bismuth: 0.25,
      silver: 0.75,
      nickel: 0.025,
    },
    source: {
      cite: 'J-STD-001C / DOD-STD-2000A, solder contamination limits, preconditioning, printed by AIM Solder, “Solder analysis”',
      how: 'published',
    },
  },
  'j-std-001-lead-free': {
    label: 'J-STD-001F, lead-free (tin-silver-copper)',
    family: 'lead-free',
    max: {
      lead: 0.1,
      copper: 1.1,
      gold: 0.2,
      cadmium: 0.005,
      zinc: 0.005,
      aluminium: 0.006,
      antimony: 0.2,
      iron: 0.02,
      arsenic: 0.03,
      bismuth: 0.25,
      nickel: 0.05,
    },
    source: {
      cite: 'J-STD-001F, 3.2.2, Table 3-1, solder contamination limits, lead-free',
      how: 'from memory',
    },
  },
} as const satisfies Record<string, BathLimits>
export type BathEdition = keyof typeof BATH_LIMITS
