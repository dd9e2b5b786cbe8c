import type { Source } from '@/shared/sources/source'

/** Where plans, switching and bounds of sampled lots come from. */
export const SAMPLING_SOURCES: readonly Source[] = [
  { cite: 'MIL-STD-105E tables I to III, 4.7 to 4.9 (ISO 2859-1)', how: 'published' },
  {
    cite: 'Clopper and Pearson, Biometrika 26 (1934); the same with hypergeometric probabilities for the lot',
    how: 'published',
  },
  {
    cite: 'Failed lot: one refinish and one retest, MIL-PRF-22684F 4.5.1.3.1.3',
    how: 'published',
  },
]
