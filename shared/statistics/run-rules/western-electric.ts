import { published } from '@/shared/sources/provenance'
import type { RunRule } from './rule'

const source = published(
  'Western Electric, Statistical Quality Control Handbook, 1956, as restated in NIST/SEMATECH e-Handbook 6.3.2',
)

/** The four zone rules. Definitions read in summaries of the handbook, not on its page. */
export const WESTERN_ELECTRIC_1956 = [
  {
    id: 'western-electric-1',
    message: 'a point beyond the control limits',
    pattern: { shape: 'beyond-limits' },
    source,
  },
  {
    id: 'western-electric-2',
    message: 'two of three points beyond two sigma on one side',
    pattern: { shape: 'beyond-zone', sigmas: 2, count: 2, of: 3 },
    source,
  },
  {
    id: 'western-electric-3',
    message: 'four of five points beyond one sigma on one side',
    pattern: { shape: 'beyond-zone', sigmas: 1, count: 4, of: 5 },
    source,
  },
  {
    id: 'western-electric-4',
    message: 'eight points in a row on one side of the centre',
    pattern: { shape: 'one-side', inARow: 8 },
    source,
  },
] as const satisfies readonly RunRule[]
