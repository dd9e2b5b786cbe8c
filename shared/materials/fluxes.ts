import { fromMemory, published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

export interface Flux {
  readonly label: string
  readonly base: 'rosin' | 'resin' | 'organic' | 'inorganic'
  readonly activity: 'low' | 'moderate' | 'high'
  readonly halide: boolean
  /** May its residue stay on the board? */
  readonly residueMayStay: 'yes' | 'only shown by test' | 'no'
  readonly source: Source
}

const CODES = 'J-STD-004, flux classification (base RO/RE/OR/IN, activity L/M/H, halide 0/1)'
const ALLOWED = published(`${CODES}; J-STD-001D, 3.3: L0 and L1 of RO, RE, OR without further proof`)

/** Fluxes by their classification. Edition matters: an L0 of one edition may hold more halide than an L1 of the next. */
export const FLUXES = {
  rol0: {
    label: 'ROL0: rosin, low activity, halide-free',
    base: 'rosin',
    activity: 'low',
    halide: false,
    residueMayStay: 'yes',
    source: ALLOWED,
  },
  rol1: {
    label: 'ROL1: rosin, low activity, halide',
    base: 'rosin',
    activity: 'low',
    halide: true,
    residueMayStay: 'yes',
    source: ALLOWED,
  },
  rom0: {
    label: 'ROM0: rosin, moderate activity, halide-free',
    base: 'rosin',
    activity: 'moderate',
    halide: false,
    residueMayStay: 'only shown by test',
    source: fromMemory(CODES),
  },
  rom1: {
    label: 'ROM1: rosin, moderate activity, halide',
    base: 'rosin',
    activity: 'moderate',
    halide: true,
    residueMayStay: 'only shown by test',
    source: fromMemory(CODES),
  },
  roh1: {
    label: 'ROH1: rosin, high activity, halide',
    base: 'rosin',
    activity: 'high',
    halide: true,
    residueMayStay: 'no',
    source: fromMemory(CODES),
  },
  rel0: {
    label: 'REL0: resin, low activity, halide-free',
    base: 'resin',
    activity: 'low',
    halide: false,
    residueMayStay: 'yes',
    source: ALLOWED,
  },
  rel1: {
    label: 'REL1: resin, low activity, halide',
    base: 'resin',
    activity: 'low',
    halide: true,
    residueMayStay: 'yes',
    source: ALLOWED,
  },
  rem0: {
    label: 'REM0: resin, moderate activity, halide-free',
    base: 'resin',
    activity: 'moderate',
    halide: false,
    residueMayStay: 'only shown by test',
    source: fromMemory(CODES),
  },
  orl0: {
    label: 'ORL0: organic, low activity, halide-free',
    base: 'organic',
    activity: 'low',
    halide: false,
    residueMayStay: 'yes',
    source: ALLOWED,
  },
  orl1: {
    label: 'ORL1: organic, low activity, halide',
    base: 'organic',
    activity: 'low',
    halide: true,
    residueMayStay: 'no',
    source: published(`${CODES}; J-STD-001D, 3.3: OR L1 not where residue stays`),
  },
  orm0: {
    label: 'ORM0: organic, moderate activity, halide-free',
    base: 'organic',
    activity: 'moderate',
    halide: false,
    residueMayStay: 'no',
    source: fromMemory(CODES),
  },
  orh1: {
    label: 'ORH1: organic, high activity, halide',
    base: 'organic',
    activity: 'high',
    halide: true,
    residueMayStay: 'no',
    source: fromMemory(CODES),
  },
  inh1: {
    label: 'INH1: inorganic, high activity, halide',
    base: 'inorganic',
    activity: 'high',
    halide: true,
    residueMayStay: 'no',
    source: fromMemory(CODES),
  },
} as const satisfies Record<string, Flux>
export type FluxKey = keyof typeof FLUXES
