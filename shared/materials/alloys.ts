import { fromMemory } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

export type AlloyFamily = 'tin-lead' | 'lead-free'

export interface Alloy {
  readonly label: string
  readonly family: AlloyFamily
  readonly solidusC: number
  readonly liquidusC: number
  readonly densityGcm3: number
  /** Mass share of lead and of bismuth, %. */
  readonly leadPct: number
  readonly bismuthPct: number
  readonly note?: string
  readonly source: Source
}

const COMPILED = 'Melting ranges as J-STD-006 gives them for information, and densities of the alloys'

/** Solders for making joints. Melting ranges differ by a few kelvin between tables. */
export const ALLOYS = {
  sn63pb37: {
    label: 'Sn63Pb37 (eutectic)',
    family: 'tin-lead',
    solidusC: 183,
    liquidusC: 183,
    densityGcm3: 8.4,
    leadPct: 37,
    bismuthPct: 0,
    source: fromMemory(COMPILED),
  },
  sn60pb40: {
    label: 'Sn60Pb40',
    family: 'tin-lead',
    solidusC: 183,
    liquidusC: 191,
    densityGcm3: 8.5,
    leadPct: 40,
    bismuthPct: 0,
    note: 'Tables print a liquidus of 188 to 191 °C; the higher is used.',
    source: fromMemory(COMPILED),
  },
  sn62pb36ag2: {
    label: 'Sn62Pb36Ag2',
    family: 'tin-lead',
    solidusC: 179,
    liquidusC: 189,
    densityGcm3: 8.41,
    leadPct: 36,
    bismuthPct: 0,
    note: 'Slows the leaching of silver; tables print a liquidus of 179 to 189 °C.',
    source: fromMemory('Melting range and density of Sn62Pb36Ag2'),
  },
  sn50pb50: {
    label: 'Sn50Pb50',
    family: 'tin-lead',
    solidusC: 183,
    liquidusC: 212,
    densityGcm3: 8.87,
    leadPct: 50,
    bismuthPct: 0,
    note: 'Tables print a liquidus of 212 to 216 °C.',
    source: fromMemory(COMPILED),
  },
  sac305: {
    label: 'Sn96.5Ag3Cu0.5',
    family: 'lead-free',
    solidusC: 217,
    liquidusC: 220,
    densityGcm3: 7.38,
    leadPct: 0,
    bismuthPct: 0,
    source: fromMemory(COMPILED),
  },
  'sn99.3cu0.7': {
    label: 'Sn99.3Cu0.7',
    family: 'lead-free',
    solidusC: 227,
    liquidusC: 227,
    densityGcm3: 7.31,
    leadPct: 0,
    bismuthPct: 0,
    source: fromMemory(COMPILED),
  },
  'sn96.5ag3.5': {
    label: 'Sn96.5Ag3.5',
    family: 'lead-free',
    solidusC: 221,
    liquidusC: 221,
    densityGcm3: 7.37,
    leadPct: 0,
    bismuthPct: 0,
    source: fromMemory(COMPILED),
  },
  sn42bi58: {
    label: 'Sn42Bi58',
    family: 'lead-free',
    solidusC: 138,
    liquidusC: 138,
    densityGcm3: 8.56,
    leadPct: 0,
    bismuthPct: 58,
    note: 'Never with lead: tin, lead and bismuth together melt near 96 °C.',
    source: fromMemory('Melting point and density of Sn42Bi58'),
  },
} as const satisfies Record<string, Alloy>
export type AlloyKey = keyof typeof ALLOYS

/** Where tin, lead and bismuth together begin to melt, °C. */
export const TERNARY_BISMUTH_C = {
  value: 96,
  source: fromMemory('Ternary eutectic of tin, lead and bismuth'),
} as const

/** The melting range of the alloys that each family's usual process windows are made for, °C. */
const USUAL_MELTING = {
  'tin-lead': { fromC: 179, toC: 191 },
  'lead-free': { fromC: 217, toC: 227 },
} as const satisfies Record<AlloyFamily, unknown>

/** Whether an alloy melts where its family usually does: windows in °C made for the family suit it. */
export const meltsAsItsFamily = ({ family, solidusC, liquidusC }: Alloy): boolean =>
  USUAL_MELTING[family].fromC <= solidusC && liquidusC <= USUAL_MELTING[family].toC
