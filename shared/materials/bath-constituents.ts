import type { Source } from '@/shared/sources/source'
import type { AlloyKey } from './alloys'
import type { Contaminant } from './bath-contaminants'
import { published } from '@/shared/sources/provenance'

/** What an alloy holds on purpose: its nominal tin, and metals that are then no contaminants. */
interface BathConstituents {
  readonly tinPct: number
  readonly onPurpose: readonly Contaminant[]
}

export const BATH_CONSTITUENTS = {
  sn63pb37: { tinPct: 63, onPurpose: ['lead'] },
  sn60pb40: { tinPct: 60, onPurpose: ['lead'] },
  sn62pb36ag2: { tinPct: 62, onPurpose: ['lead', 'silver'] },
  sn50pb50: { tinPct: 50, onPurpose: ['lead'] },
  sac305: { tinPct: 96.5, onPurpose: ['silver'] },
  'sn99.3cu0.7': { tinPct: 99.3, onPurpose: [] },
  'sn96.5ag3.5': { tinPct: 96.5, onPurpose: ['silver'] },
  sn42bi58: { tinPct: 42, onPurpose: ['bismuth'] },
} as const satisfies Record<AlloyKey, BathConstituents>

/** The most of each impurity that newly supplied solder may hold, % by mass: not a limit for a used bath. */
export const NEW_SOLDER_MOST: {
  readonly most: Readonly<Record<Contaminant, number>>
  readonly source: Source
} = {
  most: {
    silver: 0.1,
    aluminium: 0.005,
    arsenic: 0.03,
    gold: 0.05,
    bismuth: 0.1,
    cadmium: 0.002,
    copper: 0.08,
    iron: 0.02,
    nickel: 0.01,
    lead: 0.1,
    antimony: 0.05,
    zinc: 0.003,
  },
  source: published('J-STD-006, 3.3: impurities of supplied alloy (secondary copy)'),
}
