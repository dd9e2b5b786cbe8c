import type { Source } from '@/shared/sources/source'
import { DENSITY_GCM3 } from './metals'
import { fromMemory, published } from '@/shared/sources/provenance'

export interface CopperFoil {
  readonly label: string
  /** Mass of a square metre, and how far it may lie below. */
  readonly areaGm2: number
  readonly belowGm2: number
  readonly source: Source
}

const WEIGHED = published(
  'Foil of nominal 18 µm: 153 ± 7 g/m²; of 35 µm: 285 ± 10 g/m² (foil data, secondary copy)',
)
const NOMINAL = fromMemory('IPC-4562: 305 g/m² for 1 oz, multiples of it, at most 10 % below')

/** Foils by their nominal thickness: what is sold by mass is thinner than its name. */
export const COPPER_FOILS = {
  '18': { label: '18 µm (½ oz)', areaGm2: 153, belowGm2: 7, source: WEIGHED },
  '35': { label: '35 µm (1 oz)', areaGm2: 285, belowGm2: 10, source: WEIGHED },
  '70': { label: '70 µm (2 oz)', areaGm2: 610, belowGm2: 61, source: NOMINAL },
  '105': { label: '105 µm (3 oz)', areaGm2: 915, belowGm2: 92, source: NOMINAL },
} as const satisfies Record<string, CopperFoil>
export type CopperFoilKey = keyof typeof COPPER_FOILS

/** The least thickness of a foil, µm: its least mass a square metre over the density of copper. */
export const leastFoilUm = ({ areaGm2, belowGm2 }: CopperFoil): number =>
  (areaGm2 - belowGm2) / DENSITY_GCM3.copper
