/**
 * Mass of solder to take out of a bath and replace, its level staying the same,
 * so that a contaminant falls (or a constituent rises) to a target share.
 *
 * found·(1 − x) + added·x = target, hence x = (found − target) / (found − added).
 *
 * Units: kg and % by mass; the result in kg. Throws RangeError when what is
 * added cannot bring the bath to the target.
 * Source: balance of masses.
 */
export function exchangeMassKg(bath: {
  bathKg: number
  foundPct: number
  targetPct: number
  addedPct: number
}): number {
  const { bathKg, foundPct, targetPct, addedPct } = bath
  if (!(bathKg > 0)) throw new RangeError('The bath needs a mass greater than zero.')
  for (const share of [foundPct, targetPct, addedPct])
    if (!(share >= 0 && share <= 100)) throw new RangeError('A share of mass lies between 0 and 100 %.')
  if (foundPct === targetPct) return 0
  const share = (foundPct - targetPct) / (foundPct - addedPct)
  if (!(share > 0 && share <= 1))
    throw new RangeError('The solder added is no nearer the target than the bath: exchange cannot reach it.')
  return bathKg * share
}

/**
 * The share of a substance after some of the bath was exchanged once, well
 * stirred. The forward reading of `exchangeMassKg`, to show that it reaches its target.
 */
export const shareAfterExchangePct = (bath: {
  bathKg: number
  foundPct: number
  addedPct: number
  exchangedKg: number
}): number => bath.foundPct + (bath.addedPct - bath.foundPct) * (bath.exchangedKg / bath.bathKg)
