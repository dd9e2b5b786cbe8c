import type { Source } from '@/shared/sources/source'
import type { ProducibilityLevel } from './hole-allowances'
import { fromMemory, published } from '@/shared/sources/provenance'

/** How one document sizes a land: over which hole, and with how much allowance for fabrication. */
export interface LandEdition {
  readonly label: string
  /** The finished hole the allowance is added to. */
  readonly over: 'largest hole' | 'smallest hole'
  /** Fabrication allowance on the diameter by producibility level, mm. */
  readonly allowanceMm: Readonly<Record<ProducibilityLevel, number>>
  readonly source: Source
}

/** Documents that disagree on the land; the programme names the one it works to. */
export const LAND_EDITIONS = {
  'ipc-2221': {
    label: 'IPC-2221B, Tables 9-1 and 9-2',
    over: 'largest hole',
    allowanceMm: { A: 0.4, B: 0.25, C: 0.2 },
    source: published(
      'IPC-2221B, Table 9-1: standard fabrication allowance, printed in K. Mitzner, Complete PCB Design (2019)',
    ),
  },
  'ipc-7251': {
    label: 'Larger lands, as IPC-7251 style libraries draw them',
    over: 'smallest hole',
    allowanceMm: { A: 0.6, B: 0.5, C: 0.4 },
    source: fromMemory('IPC-7251 style land formula: hole + 0.1 + 0.6/0.5/0.4 mm'),
  },
  'mil-std-275': {
    label: 'MIL-STD-275: largest hole + 0.86 mm',
    over: 'largest hole',
    // 0.864 mm in all, less the two rings of 0.05 mm that are added apart
    allowanceMm: { A: 0.764, B: 0.764, C: 0.764 },
    source: published('MIL-STD-275: terminal area at least 0.034 in over the largest hole'),
  },
} as const satisfies Record<string, LandEdition>
export type LandEditionKey = keyof typeof LAND_EDITIONS

/** The editions that rule together, strictest first to bind, when a programme names none. */
export const CURRENT_LAND_EDITIONS = ['ipc-2221', 'ipc-7251'] as const satisfies readonly LandEditionKey[]

/** What is known of the ring on inner layers of a delivered board. */
export const INNER_RING = {
  message:
    'A ring on an inner layer is measured from the drilled hole; a delivered board of class 3 must keep 0.025 mm of it.',
  source: published(
    'IPC-6012E, Table 3-9, class 3: 0.025 mm internal from the drilled hole, printed by Summit Interconnect, “IPC rule for land sizes for a plated mechanically drilled hole”, 2022',
  ),
} as const

/** How much of a ring a delivered hole may break out of, by product class. */
export const BREAKOUT_BY_CLASS = {
  '1': { allowed: '180° of breakout', source: fromMemory('IPC-6012, class 1') },
  '2': {
    allowed: '90° of breakout, with a filleted conductor junction',
    source: published(
      'IPC-6012E, Table 3-9, printed by Summit Interconnect, “IPC rule for land sizes for a plated mechanically drilled hole”, 2022',
    ),
  },
  '3': {
    allowed: 'no breakout',
    source: published(
      'IPC-6012E, Table 3-9, printed by Summit Interconnect, “IPC rule for land sizes for a plated mechanically drilled hole”, 2022',
    ),
  },
} as const
