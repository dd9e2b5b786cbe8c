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

/** The edition chosen rules the switching; what is sampled is always read from the tables of MIL-STD-105E. */
export const tablesNote = ({ edition }: { readonly edition?: string | undefined }): readonly string[] =>
  edition === 'ISO 2859-1'
    ? [
        'ISO 2859-1 rules the switching alone: sample sizes, acceptance and rejection numbers are those of the MIL-STD-105E tables, from which ISO 2859-1:1999 departs in places (its reduced plans have no gap between the two numbers; from memory).',
      ]
    : []
