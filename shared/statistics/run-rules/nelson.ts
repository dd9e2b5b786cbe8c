import { published } from '@/shared/sources/provenance'
import type { RunRule } from './rule'

const source = published(
  'L. S. Nelson, The Shewhart control chart: tests for special causes, Journal of Quality Technology 16 (1984), 237–239',
)

/**
 * The eight tests. Definitions read in statistics texts that restate the paper.
 * Test 2 asks for nine points where the Western Electric rule asks for eight.
 * ISO 7870-2:2013 keeps a shorter set (outside the limits, a run on one side, a
 * trend, an unusual pattern); its run lengths are not held here, for want of a
 * reading of the standard (from memory).
 */
export const NELSON_1984 = [
  {
    id: 'nelson-1',
    message: 'a point beyond the control limits',
    pattern: { shape: 'beyond-limits' },
    source,
  },
  {
    id: 'nelson-2',
    message: 'nine points in a row on one side of the centre',
    pattern: { shape: 'one-side', inARow: 9 },
    source,
  },
  {
    id: 'nelson-3',
    message: 'six points in a row steadily rising or falling',
    pattern: { shape: 'trend', inARow: 6 },
    source,
  },
  {
    id: 'nelson-4',
    message: 'fourteen points in a row up and down by turns',
    pattern: { shape: 'alternating', inARow: 14 },
    source,
  },
  {
    id: 'nelson-5',
    message: 'two of three points beyond two sigma on one side',
    pattern: { shape: 'beyond-zone', sigmas: 2, count: 2, of: 3 },
    source,
  },
  {
    id: 'nelson-6',
    message: 'four of five points beyond one sigma on one side',
    pattern: { shape: 'beyond-zone', sigmas: 1, count: 4, of: 5 },
    source,
  },
  {
    id: 'nelson-7',
    message: 'fifteen points in a row within one sigma of the centre',
    pattern: { shape: 'inside-zone', sigmas: 1, inARow: 15 },
    source,
  },
  {
    id: 'nelson-8',
    message: 'eight points in a row with none within one sigma of the centre',
    pattern: { shape: 'outside-zone', sigmas: 1, inARow: 8 },
    source,
  },
] as const satisfies readonly RunRule[]
