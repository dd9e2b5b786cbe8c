import type { Outline } from '../outline'
import type { LandPair } from '../land-pairs'

/** A direction in which a board can travel over the wave, in degrees from x to the left, and the edge that goes first. */
export const TRAVELS = [
  { angleDeg: 0, first: 'right' },
  { angleDeg: 90, first: 'upper' },
  { angleDeg: 180, first: 'left' },
  { angleDeg: 270, first: 'lower' },
] as const
export type Axis = 'x' | 'y'

export const axisOf = ({ angleDeg }: (typeof TRAVELS)[number]): Axis => (angleDeg % 180 === 0 ? 'x' : 'y')

/**
 * How far two lands face each other across the travel, mm: what lies side by side at right angles to the way from one to
 * the other, times the sine of its angle to the travel.
 */
export const acrossTravelMm = ({ across, sideBySideMm }: LandPair, axis: Axis): number =>
  sideBySideMm * Math.abs(across[axis === 'x' ? 0 : 1])

/** How much of an outline and of what is specified may differ and still be one length, mm. */
const SAME_LENGTH_MM = 0.5

/** Along which axis of its files a board travels, as its specified length and width have it; undefined where they do not tell. */
export function travelAxis(
  outline: Outline | undefined,
  { alongMm, acrossMm }: { alongMm: number | undefined; acrossMm: number | undefined },
): Axis | undefined {
  if (!outline?.closed) return undefined
  const [width, height] = [outline.box.maxX - outline.box.minX, outline.box.maxY - outline.box.minY]
  const is = (one: number, other: number): boolean =>
    (alongMm === undefined || Math.abs(alongMm - one) <= SAME_LENGTH_MM) &&
    (acrossMm === undefined || Math.abs(acrossMm - other) <= SAME_LENGTH_MM)
  if (alongMm === undefined && acrossMm === undefined) return undefined
  const [alongX, alongY] = [is(width, height), is(height, width)]
  if (alongX === alongY) return undefined
  return alongX ? 'x' : 'y'
}

/** What a direction of travel comes to: pairs that face each other mostly across it, and how far all of them do. */
interface TravelCount {
  readonly pairs: number
  readonly acrossMm: number
}

/** Lands that leave the wave one behind the other bridge along it: those whose gap lies more along the travel than across. */
export function countFor(pairs: readonly LandPair[], axis: Axis): TravelCount {
  const lie = pairs.filter(({ across: [x, y] }) =>
    axis === 'x' ? Math.abs(x) > Math.abs(y) : Math.abs(y) > Math.abs(x),
  )
  return { pairs: lie.length, acrossMm: pairs.reduce((sum, pair) => sum + acrossTravelMm(pair, axis), 0) }
}
