import type { Source } from '@/shared/sources/source'
import type { PointBehaviour } from '@/shared/statistics/charts/chart'

/** What a rule looks for among successive points. Zones are counted in sigmas from the centre. */
export type Pattern =
  /** A point outside its control limits. */
  | { shape: 'beyond-limits' }
  /** Points in a row on one side of the centre. */
  | { shape: 'one-side'; inARow: number }
  /** Points in a row, each above (or each below) the one before. */
  | { shape: 'trend'; inARow: number }
  /** Points in a row, up and down by turns. */
  | { shape: 'alternating'; inARow: number }
  /** So many of so many successive points beyond a zone on the same side. */
  | { shape: 'beyond-zone'; sigmas: number; count: number; of: number }
  /** Points in a row within a zone about the centre, on either side. */
  | { shape: 'inside-zone'; sigmas: number; inARow: number }
  /** Points in a row outside a zone about the centre, on either side. */
  | { shape: 'outside-zone'; sigmas: number; inARow: number }

export type RunRule = {
  id: string
  /** In words, as a screen shows it. */
  message: string
  pattern: Pattern
  source: Source
}

/**
 * Which rules mean anything for points of a given behaviour. Points that share
 * readings (moving ranges, weighted averages) form runs by themselves; skewed
 * statistics (ranges, counts) fill the zones unevenly while nothing is wrong.
 */
export function suits(rule: RunRule, behaviour: PointBehaviour): boolean {
  const { shape } = rule.pattern
  if (shape === 'beyond-limits' || behaviour === 'near-normal') return true
  return behaviour === 'skewed' && (shape === 'one-side' || shape === 'trend' || shape === 'alternating')
}
