import { published } from '@/shared/sources/provenance'

/**
 * How far a plated hole may stand off its lead, by producibility level:
 * finished hole at its smallest ≥ lead at its largest + `leastOverMostMm`;
 * finished hole at its largest ≤ lead at its smallest + `mostOverLeastMm`.
 * Diametral, in mm.
 */
export const HOLE_ALLOWANCES = {
  A: {
    label: 'Level A: general, preferred',
    minOverMaxMm: 0.25,
    maxOverMinMm: 0.7,
    source: published('IPC-2222A/B, Table 9-5, level A, printed in K. Mitzner, Complete PCB Design (2019)'),
  },
  B: {
    label: 'Level B: moderate, standard',
    minOverMaxMm: 0.2,
    maxOverMinMm: 0.7,
    source: published('IPC-2222A/B, Table 9-5, level B, printed in K. Mitzner, Complete PCB Design (2019)'),
  },
  C: {
    label: 'Level C: high, reduced producibility',
    minOverMaxMm: 0.15,
    maxOverMinMm: 0.6,
    source: published('IPC-2222A/B, Table 9-5, level C, printed in K. Mitzner, Complete PCB Design (2019)'),
  },
} as const
export type ProducibilityLevel = keyof typeof HOLE_ALLOWANCES
