import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

/** The alloys and fluxes that solderability tests name; the process may use others. */
export interface TestSolder {
  readonly label: string
  readonly family: 'tin-lead' | 'lead-free'
  readonly from: Source
}

const iec20: Source = fromMemory('IEC 60068-2-20, Test Ta, test solders')

export const TEST_SOLDERS = {
  Sn60Pb40: { label: 'Sn60Pb40', family: 'tin-lead', from: iec20 },
  Sn63Pb37: {
    label: 'Sn63Pb37',
    family: 'tin-lead',
    from: fromMemory('MIL-STD-202 method 208, test solder'),
  },
  'Sn96.5Ag3Cu0.5': { label: 'Sn96.5Ag3Cu0.5', family: 'lead-free', from: iec20 },
  'Sn99.3Cu0.7': { label: 'Sn99.3Cu0.7', family: 'lead-free', from: iec20 },
} as const satisfies Record<string, TestSolder>

export interface TestFlux {
  readonly label: string
  readonly from: Source
}

export const TEST_FLUXES = {
  'rosin-non-activated': {
    label: 'Rosin, non-activated (25 % in alcohol)',
    from: fromMemory('IEC 60068-2-20, Test Ta, flux'),
  },
  'rosin-activated-0.2': {
    label: 'Rosin, activated, 0.2 % halide',
    from: fromMemory('IEC 60068-2-20, Test Ta, flux'),
  },
  'rosin-activated-0.5': {
    label: 'Rosin, activated, 0.5 % halide',
    from: fromMemory('IEC 60068-2-20, Test Ta, flux'),
  },
  'rosin-mildly-activated': {
    label: 'Rosin, mildly activated',
    from: commonPractice('Common practice for coupons'),
  },
  'process-flux': {
    label: 'The flux of the process',
    from: commonPractice('By agreement between the parties'),
  },
} as const satisfies Record<string, TestFlux>
