export interface HoleCall {
  readonly diameterMm: number
  /** ± of the finished hole, the spread of drill and plating included. */
  readonly toleranceMm: number
  readonly given: 'finished' | 'drilled'
  /** Metal on the wall of the hole, copper and finish; zero for an unplated hole. */
  readonly barrelUm: number
}

export interface FinishedHole {
  readonly minMm: number
  readonly nominalMm: number
  readonly maxMm: number
  readonly toleranceMm: number
  /** The tool that makes it. */
  readonly drillMm: number
}

/**
 * The hole a lead meets: where the drill is given, twice the wall metal is
 * taken off; where the finished hole is given, the drill is worked back.
 *
 * Units: mm, wall metal in µm. Throws RangeError when nothing of the hole is left.
 */
export function finishedHole({ diameterMm, toleranceMm, given, barrelUm }: HoleCall): FinishedHole {
  if (!(barrelUm >= 0)) throw new RangeError('The metal on the wall of a hole must not be negative.')
  const barrelsMm = (2 * barrelUm) / 1000
  const nominalMm = given === 'drilled' ? diameterMm - barrelsMm : diameterMm
  if (!(nominalMm > 0)) throw new RangeError('The plating leaves no hole.')
  if (!(toleranceMm >= 0 && toleranceMm < nominalMm)) {
    throw new RangeError('The tolerance of a hole must be smaller than the hole, and not negative.')
  }
  return {
    minMm: nominalMm - toleranceMm,
    nominalMm,
    maxMm: nominalMm + toleranceMm,
    toleranceMm,
    drillMm: given === 'drilled' ? diameterMm : diameterMm + barrelsMm,
  }
}
