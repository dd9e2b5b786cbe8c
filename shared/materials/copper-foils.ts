import { fromMemory, published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

/** What is left at least of a foil when the board is finished, µm. */
export interface CopperFoil {
  readonly label: string
  /** The foil as bought, at most a tenth below its nominal mass. */
  readonly boughtUm: number
  /** On an inner layer, after all cleaning and etching. */
  readonly innerUm: number
  /** On an outer layer, before what plating lays on it is added. */
  readonly outerUm: number
  readonly source: Source
}

const AFTER_PROCESSING = published(
  'IPC-6012, internal layer foil thickness after processing and external conductor thickness after plating (Tables 3-11 and 3-12 of revision C, from memory), printed by NCAB Group, “How much finished copper can be expected?”: inner 11.4, 24.9 and 55.7 µm, outer 38.4, 52.9 and 83.7 µm of class 3 with 25 µm plated',
)
const IN_BETWEEN = fromMemory(
  'IPC-6012, the same tables: 3 oz leaves 86.6 µm inside, and 113.6 µm outside with 25 µm plated',
)

/** Foils by their nominal thickness: what is sold by mass is thinner than its name, and processing takes more of it. */
export const COPPER_FOILS = {
  '18': {
    label: '18 µm (½ oz)',
    boughtUm: 15.4,
    innerUm: 11.4,
    outerUm: 13.4,
    source: AFTER_PROCESSING,
  },
  '35': {
    label: '35 µm (1 oz)',
    boughtUm: 30.9,
    innerUm: 24.9,
    outerUm: 27.9,
    source: AFTER_PROCESSING,
  },
  '70': {
    label: '70 µm (2 oz)',
    boughtUm: 61.7,
    innerUm: 55.7,
    outerUm: 58.7,
    source: AFTER_PROCESSING,
  },
  '105': {
    label: '105 µm (3 oz)',
    boughtUm: 92.6,
    innerUm: 86.6,
    outerUm: 88.6,
    source: IN_BETWEEN,
  },
} as const satisfies Record<string, CopperFoil>
export type CopperFoilKey = keyof typeof COPPER_FOILS
