import { fromMemory } from '@/shared/sources/provenance'
import type { WettingCurveMarks } from './wetting-curve'
import { formatAgainst, formatQuantity } from '@/shared/quantity/format'
import type { Margin } from '@/shared/rules/finding'

/** What the parties may agree that a wetting curve must show. */
export interface WettingBalanceCriteria {
  readonly label: string
  /** Crosses the buoyancy line (90°) by then. */
  readonly crossByS: number
  /** Force at 2 s as a share of the theoretical force; 0 where any pull will do. */
  readonly forceAt2sShare: number
  /** Force at 5 s as a share of the force at 2 s. */
  readonly forceAt5sShare: number
}

/**
 * The two sets suggested by J-STD-002, from memory. Its area criterion is not
 * judged: the text that defines it for set A was not at hand; the area is shown.
 * Forces are taken from the true zero line, theoretical force γ·P − ρ·g·V.
 */
export const WETTING_BALANCE_CRITERIA = {
  'set-a': { label: 'Set A of J-STD-002', crossByS: 1, forceAt2sShare: 0.5, forceAt5sShare: 0.9 },
  'set-b': { label: 'Set B of J-STD-002', crossByS: 2, forceAt2sShare: 0, forceAt5sShare: 0.9 },
} as const satisfies Record<string, WettingBalanceCriteria>

export const CRITERIA_SOURCE = fromMemory('J-STD-002, suggested wetting-balance criteria, sets A and B')

/** One criterion on one curve: its margin, and the words for it. */
export interface CriterionJudged {
  readonly key: CriterionKey
  readonly margin: Margin
  readonly found: string
}

const CRITERION_NAMES = {
  crossing: 'crosses the buoyancy line',
  'force at 2 s': 'force at 2 s',
  'force at 5 s': 'force at 5 s',
  dewetting: 'falls after its peak',
} as const
export type CriterionKey = keyof typeof CRITERION_NAMES

/**
 * One curve against agreed criteria. A mark that the curve never reached counts
 * as endlessly late, and a force that was not recorded as not a number.
 */
export function judgeCurve(
  marks: WettingCurveMarks,
  criteria: WettingBalanceCriteria,
  { dropMaxPct, guardPct }: { readonly dropMaxPct: number; readonly guardPct: number },
): CriterionJudged[] {
  const { forceAt2sMN = Number.NaN, forceAt5sMN = Number.NaN, theoreticalMN } = marks
  const guardShare = guardPct / 100
  return [
    atMost('crossing', marks.buoyancyCrossS ?? Infinity, criteria.crossByS, { unit: 's', guardShare }),
    atLeast('force at 2 s', forceAt2sMN, criteria.forceAt2sShare * Math.max(0, theoreticalMN), guardShare),
    atLeast('force at 5 s', forceAt5sMN, criteria.forceAt5sShare * forceAt2sMN, guardShare),
    atMost('dewetting', marks.dewettingDropPct ?? Infinity, dropMaxPct, { unit: '%', guardShare }),
  ]
}

function atMost(
  key: CriterionKey,
  found: number,
  limit: number,
  { unit, guardShare }: { readonly unit: 's' | '%'; readonly guardShare: number },
): CriterionJudged {
  const margin: Margin = { found, limit, unit, direction: 'at most', guardBand: guardShare * limit }
  const name = CRITERION_NAMES[key]
  if (!Number.isFinite(found)) return { key, margin, found: `${name}: never` }
  const pair = formatAgainst(found, limit, unit)
  return { key, margin, found: `${name}: ${pair.found} (at most ${pair.limit})` }
}

function atLeast(key: CriterionKey, found: number, limit: number, guardShare: number): CriterionJudged {
  const guardBand = guardShare * Math.abs(limit)
  const margin: Margin = { found, limit, unit: 'mN', direction: 'at least', guardBand }
  const name = CRITERION_NAMES[key]
  if (Number.isNaN(found) || Number.isNaN(limit)) return { key, margin, found: `${name}: not recorded` }
  const pair = formatAgainst(found, limit, 'mN')
  return { key, margin, found: `${name}: ${pair.found} (at least ${formatQuantity(limit, 'mN', 3)})` }
}
