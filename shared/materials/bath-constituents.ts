import type { Source } from '@/shared/sources/source'
import type { AlloyKey } from './alloys'
import type { Contaminant } from './bath-contaminants'
import { fromMemory, published } from '@/shared/sources/provenance'

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

/** The most of each impurity that newly supplied solder may hold, % by mass, as one revision prints it: not a limit for a used bath. */
interface NewSolderLimits {
  readonly max: Readonly<Record<Contaminant | 'indium', number>>
  readonly source: Source
}

const OTHERS = {
  silver: 0.1,
  aluminium: 0.005,
  arsenic: 0.03,
  gold: 0.05,
  bismuth: 0.1,
  cadmium: 0.002,
  copper: 0.08,
  iron: 0.02,
  nickel: 0.01,
  zinc: 0.003,
} as const

/** J-STD-006 by revision. Lead and antimony changed; indium, which no bath here is analysed for, stands at 0.10 %. */
export const NEW_SOLDER_BY_REVISION = {
  'j-std-006b': {
    max: { ...OTHERS, lead: 0.1, antimony: 0.05, indium: 0.1 },
    source: published(
      'J-STD-006B (2006), 3.3, before its amendments, as quoted on the IPC TGAsia mail list, June 2007',
    ),
  },
  'j-std-006c': {
    max: { ...OTHERS, lead: 0.07, antimony: 0.2, indium: 0.1 },
    source: fromMemory(
      'J-STD-006C (2013), 3.3: lead and antimony as corrected by amendments 1 and 2 to revision B (2008, 2009)',
    ),
  },
} as const satisfies Record<string, NewSolderLimits>

/**
 * What solder added is taken to hold at most where no certificate is entered:
 * of each impurity the most that either revision allows, so that no exchange is
 * promised to do more than it may.
 */
export const NEW_SOLDER_MAX: {
  readonly max: Readonly<Record<Contaminant, number>>
  readonly source: Source
} = {
  max: {
    ...OTHERS,
    lead: Math.max(...Object.values(NEW_SOLDER_BY_REVISION).map(({ max }) => max.lead)),
    antimony: Math.max(...Object.values(NEW_SOLDER_BY_REVISION).map(({ max }) => max.antimony)),
  },
  source: fromMemory(
    'J-STD-006, 3.3: impurities of supplied alloy; lead 0.10 % by revision B (2006), antimony 0.20 % by revision C (2013)',
  ),
}
