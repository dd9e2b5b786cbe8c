/** A rule for bending component leads: the least inside radius and the least straight length before the bend. */
export interface BendRule {
  readonly edition: string
  readonly minRadiusMm: (diameterMm: number) => number
  readonly minStraightMm: (diameterMm: number) => number
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
  },
  'tm-9-254': {
    edition: 'TM 9-254, page 4-42: 2 diameters, 1/16 inch clear',
    minRadiusMm: (diameterMm) => 2 * diameterMm,
    minStraightMm: () => 1.5875,
  },
  'nasa-8739': {
    edition: 'NASA-STD-8739.3 (from memory): 1 diameter, 2 diameters straight',
    minRadiusMm: (diameterMm) => diameterMm,
    minStraightMm: (diameterMm) => 2 * diameterMm,
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
): { radiusMm: number; radiusFrom: string; straightMm: number; straightFrom: string } {
  if (!(diameterMm > 0)) throw new RangeError('A lead has a diameter greater than zero.')
  const rules: BendRule[] = edition ? [BEND_RULES[edition]] : Object.values(BEND_RULES)
  const strictest = (ask: (rule: BendRule) => number): BendRule =>
    rules.reduce((max, rule) => (ask(rule) > ask(max) ? rule : max))
  const radius = strictest((rule) => rule.minRadiusMm(diameterMm))
  const straight = strictest((rule) => rule.minStraightMm(diameterMm))
  return {
    radiusMm: radius.minRadiusMm(diameterMm),
    radiusFrom: radius.edition,
    straightMm: straight.minStraightMm(diameterMm),
    straightFrom: straight.edition,
  }
}
