import { fromMemory } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

/** How long a sample floats on solder at a temperature without blistering. */
export interface SolderFloat {
  readonly temperatureC: number
  readonly seconds: number
}

export interface Laminate {
  readonly label: string
  readonly base: 'paper and phenolic' | 'paper and epoxy' | 'composite' | 'woven glass'
  /** Whether the laminate carries plated-through holes over a long service. */
  readonly platedHoles: 'no' | 'not for a long life' | 'yes'
  readonly glassTransitionC: number
  /** Highest temperature to work at, whatever the glass transition. */
  readonly maxOperatingC: number
  /** Expansion through the thickness below and above the glass transition, ppm/K. */
  readonly throughExpansionPpmK?: { readonly below: number; readonly above: number }
  /** Expansion in the plane, ppm/K. */
  readonly inPlaneExpansionPpmK?: number
  readonly flammability: string
  /** By rising temperature. */
  readonly solderFloat: readonly SolderFloat[]
  /** Fit for the temperatures of lead-free soldering. */
  readonly leadFree: boolean
  readonly note?: string
  readonly source: Source
}

const PAPER_PHENOLIC_NOTE =
  'Brittle, takes up moisture, holds copper poorly when reworked; lands are best 2.5 to 3 times the hole.'

/** Base laminates. Values of one grade differ between makers: a certificate in hand rules over the table. */
export const LAMINATES = {
  xpc: {
    label: 'XPC paper phenolic',
    base: 'paper and phenolic',
    platedHoles: 'no',
    glassTransitionC: 105,
    maxOperatingC: 70,
    flammability: 'HB (UL 94)',
    solderFloat: [{ temperatureC: 260, seconds: 10 }],
    leadFree: false,
    note: PAPER_PHENOLIC_NOTE,
    source: fromMemory('IPC-4101/00; IEC 61249-2-1: XPC'),
  },
  'fr-1': {
    label: 'FR-1 paper phenolic',
    base: 'paper and phenolic',
    platedHoles: 'no',
    glassTransitionC: 105,
    maxOperatingC: 105,
    flammability: 'V-0 or V-1 (UL 94)',
    solderFloat: [{ temperatureC: 260, seconds: 10 }],
    leadFree: false,
    note: `${PAPER_PHENOLIC_NOTE} Sources give 105 and 130 °C for FR-1 and FR-2 the one way round and the other; the lower is used for both.`,
    source: fromMemory('IPC-4101/02; IEC 61249-2-1: FR-1'),
  },
  'fr-2': {
    label: 'FR-2 paper phenolic',
    base: 'paper and phenolic',
    platedHoles: 'no',
    glassTransitionC: 105,
    maxOperatingC: 105,
    flammability: 'V-0 or V-1 (UL 94)',
    solderFloat: [{ temperatureC: 260, seconds: 10 }],
    leadFree: false,
    note: `${PAPER_PHENOLIC_NOTE} Sources give 105 and 130 °C for FR-1 and FR-2 the one way round and the other; the lower is used for both.`,
    source: fromMemory('IPC-4101/03; IEC 61249-2-2: FR-2'),
  },
  'fr-3': {
    label: 'FR-3 paper epoxy',
    base: 'paper and epoxy',
    platedHoles: 'not for a long life',
    glassTransitionC: 100,
    maxOperatingC: 100,
    flammability: 'V-0 (UL 94)',
    solderFloat: [{ temperatureC: 260, seconds: 20 }],
    leadFree: false,
    source: fromMemory('IPC-4101/04; IEC 61249-2-3: FR-3'),
  },
  'cem-1': {
    label: 'CEM-1 (paper core, glass faces, epoxy)',
    base: 'composite',
    platedHoles: 'not for a long life',
    glassTransitionC: 110,
    maxOperatingC: 110,
    flammability: 'V-0 (UL 94)',
    solderFloat: [{ temperatureC: 260, seconds: 20 }],
    leadFree: false,
    source: fromMemory('IPC-4101/10; IEC 61249-2-5: CEM-1'),
  },
  'cem-3': {
    label: 'CEM-3 (glass felt core, glass faces, epoxy)',
    base: 'composite',
    platedHoles: 'yes',
    glassTransitionC: 125,
    maxOperatingC: 110,
    flammability: 'V-0 (UL 94)',
    solderFloat: [{ temperatureC: 260, seconds: 60 }],
    leadFree: false,
    source: fromMemory('IPC-4101/12; IEC 61249-2-6: CEM-3'),
  },
  'fr-4': {
    label: 'FR-4, glass transition 135 °C',
    base: 'woven glass',
    platedHoles: 'yes',
    glassTransitionC: 135,
    maxOperatingC: 110,
    throughExpansionPpmK: { below: 60, above: 300 },
    inPlaneExpansionPpmK: 14,
    flammability: 'V-0 (UL 94)',
    solderFloat: [
      { temperatureC: 260, seconds: 120 },
      { temperatureC: 288, seconds: 10 },
    ],
    leadFree: false,
    note: 'Dicyandiamide-cured grades are best kept under 240 °C at the board.',
    source: fromMemory(
      'IPC-4101E/21: glass transition from 130 °C, 10 s at 288 °C; the rest the usual values of the grade',
    ),
  },
  'fr-4-mid': {
    label: 'FR-4, glass transition 150 °C',
    base: 'woven glass',
    platedHoles: 'yes',
    glassTransitionC: 153,
    maxOperatingC: 125,
    throughExpansionPpmK: { below: 55, above: 287 },
    inPlaneExpansionPpmK: 14,
    flammability: 'V-0 (UL 94)',
    solderFloat: [
      { temperatureC: 260, seconds: 120 },
      { temperatureC: 288, seconds: 10 },
    ],
    leadFree: true,
    source: fromMemory('FR-4 of 150 °C: usual values of the grade, with the float of IPC-4101/21'),
  },
  'fr-4-high': {
    label: 'FR-4, glass transition 170 °C',
    base: 'woven glass',
    platedHoles: 'yes',
    glassTransitionC: 175,
    maxOperatingC: 150,
    throughExpansionPpmK: { below: 40, above: 200 },
    inPlaneExpansionPpmK: 13,
    flammability: 'V-0 (UL 94)',
    solderFloat: [
      { temperatureC: 260, seconds: 240 },
      { temperatureC: 288, seconds: 240 },
    ],
    leadFree: true,
    source: fromMemory('FR-4 of 170 °C: usual values of the grade, 240 s at 288 °C'),
  },
  'g-10': {
    label: 'G-10 glass epoxy, not flame-retardant',
    base: 'woven glass',
    platedHoles: 'yes',
    glassTransitionC: 130,
    maxOperatingC: 100,
    inPlaneExpansionPpmK: 14,
    flammability: 'HB (UL 94)',
    solderFloat: [{ temperatureC: 260, seconds: 60 }],
    leadFree: false,
    source: fromMemory('IPC-4101/20: G-10; use temperature 100 °C'),
  },
  polyimide: {
    label: 'Polyimide and glass',
    base: 'woven glass',
    platedHoles: 'yes',
    glassTransitionC: 250,
    maxOperatingC: 210,
    flammability: 'HB or V-1 (UL 94)',
    solderFloat: [
      { temperatureC: 260, seconds: 240 },
      { temperatureC: 288, seconds: 60 },
    ],
    leadFree: true,
    source: fromMemory('IPC-4101/40: polyimide glass; use temperature 210 °C'),
  },
} as const satisfies Record<string, Laminate>
export type LaminateKey = keyof typeof LAMINATES
