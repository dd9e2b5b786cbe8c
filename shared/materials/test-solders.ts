import type { Source } from '@/shared/plan/requirement'

/** The alloys and fluxes that solderability tests name; the process may use others. */
export interface TestSolder {
  readonly label: string
  readonly family: 'tin-lead' | 'lead-free'
  readonly from: Source
}

const iec20: Source = { cite: 'IEC 60068-2-20, Test Ta, test solders', how: 'from memory' }

export const TEST_SOLDERS = {
  Sn60Pb40: { label: 'Sn60Pb40', family: 'tin-lead', from: iec20 },
  Sn63Pb37: {
    label: 'Sn63Pb37',
    family: 'tin-lead',
    from: { cite: 'MIL-STD-202 method 208, test solder', how: 'from memory' },
  },
  'Sn96.5Ag3Cu0.5': { label: 'Sn96.5Ag3Cu0.5', family: 'lead-free', from: iec20 },
  'Sn99.3Cu0.7': { label: 'Sn99.3Cu0.7', family: 'lead-free', from: iec20 },
} as const satisfies Record<string, TestSolder>

export type TestSolderKey = keyof typeof TEST_SOLDERS

export interface TestFlux {
  readonly label: string
  readonly from: Source
}

export const TEST_FLUXES = {
  'rosin-non-activated': {
    label: 'Rosin, non-activated (25 % in alcohol)',
    from: { cite: 'IEC 60068-2-20, Test Ta, flux', how: 'from memory' },
  },
  'rosin-activated-0.2': {
    label: 'Rosin, activated, 0.2 % halide',
    from: { cite: 'IEC 60068-2-20, Test Ta, flux', how: 'from memory' },
  },
  'rosin-activated-0.5': {
    label: 'Rosin, activated, 0.5 % halide',
    from: { cite: 'IEC 60068-2-20, Test Ta, flux', how: 'from memory' },
  },
  'rosin-mildly-activated': {
    label: 'Rosin, mildly activated',
    from: { cite: 'Common practice for coupons', how: 'common practice, no published source' },
  },
  'process-flux': {
    label: 'The flux of the process',
    from: { cite: 'By agreement between the parties', how: 'common practice, no published source' },
  },
} as const satisfies Record<string, TestFlux>

export type TestFluxKey = keyof typeof TEST_FLUXES

/** The options of a choice, in the order of the table. */
export const choicesOf = <K extends string>(
  table: Record<K, { readonly label: string }>,
): { value: K; label: string }[] =>
  (Object.keys(table) as K[]).map((value) => ({ value, label: table[value].label }))
