import { fromMemory, published } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

/** A rule for bending component leads: the least inside radius and the least straight length before the bend. */
export interface BendRule {
  readonly edition: string
  readonly minRadiusMm: (diameterMm: number) => number
  readonly minStraightMm: (diameterMm: number) => number
  readonly source: Source
}

/** "Less than 0.8 mm", "0.8 to 1.2 mm", "greater than 1.2 mm": both ends belong to the middle row. */
const bySize = (diameterMm: number): number => {
  if (diameterMm < 0.8) return 1
  return diameterMm <= 1.2 ? 1.5 : 2
}

/** The published rules on bending leads; sources disagree, so the edition is named with each. */
export const BEND_RULES = {
  'ipc-by-size': {
    edition: 'J-STD-001 / IPC-A-610 lead bend table: 1, 1.5 or 2 diameters by size',
    minRadiusMm: (diameterMm) => bySize(diameterMm) * diameterMm,
    minStraightMm: (diameterMm) => Math.max(diameterMm, 0.8),
    source: published(
      'IPC-CM-770E, as printed in K. Mitzner, Complete PCB Design (2019): 1 diameter below 0.8 mm, 1.5 from 0.8 to 1.2 mm, 2 above; straight for 1 diameter and 0.8 mm at least; the same in IPC-A-610F, Table 7-1 (from memory)',
    ),
  },
  'tm-9-254': {
    edition: 'TM 9-254, page 4-42: 2 diameters, 1/16 inch clear',
    minRadiusMm: (diameterMm) => 2 * diameterMm,
    minStraightMm: () => 1.5875,
    source: published('TM 9-254, page 4-42: bends of 2 diameters, 1/16 inch clear of the body'),
  },
  'nasa-8739': {
    edition: 'NASA-STD-8739.3: 1 diameter, 2 diameters straight',
    minRadiusMm: (diameterMm) => diameterMm,
    minStraightMm: (diameterMm) => 2 * diameterMm,
    source: fromMemory('NASA-STD-8739.3: bends of 1 diameter, straight for 2 diameters'),
  },
} as const satisfies Record<string, BendRule>
export type BendEdition = keyof typeof BEND_RULES

/**
 * The least inside radius and straight length for a lead: of one edition, or
 * the strictest of all when none is chosen.
 *
 * Units: mm. Throws RangeError on a diameter that is not positive.
 */
export function minBend(
  diameterMm: number,
  edition?: BendEdition,
): { radiusMm: number; radiusFrom: BendRule; straightMm: number; straightFrom: BendRule } {
  if (!(diameterMm > 0)) throw new RangeError('A lead has a diameter greater than zero.')
  const rules: BendRule[] = edition ? [BEND_RULES[edition]] : Object.values(BEND_RULES)
  const strictest = (ask: (rule: BendRule) => number): BendRule =>
    rules.reduce((max, rule) => (ask(rule) > ask(max) ? rule : max))
  const radius = strictest((rule) => rule.minRadiusMm(diameterMm))
  const straight = strictest((rule) => rule.minStraightMm(diameterMm))
  return {
    radiusMm: radius.minRadiusMm(diameterMm),
    radiusFrom: radius,
    straightMm: straight.minStraightMm(diameterMm),
    straightFrom: straight,
  }
}
