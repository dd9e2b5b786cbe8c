/**
 * The preferred drill whose finished hole lies nearest to the one wanted, with
 * twice the wall metal taken off the drill. Undefined when the series has none
 * that leaves a finished hole inside the bounds.
 *
 * Units: mm, wall metal in µm. `sizesMm` ascending.
 */
export function nearestDrill(question: {
  readonly wantedMm: number
  readonly minMm: number
  readonly maxMm: number
  readonly barrelUm: number
  readonly sizesMm: readonly number[]
}): { drillMm: number; finishedMm: number } | undefined {
  const { wantedMm, minMm, maxMm, barrelUm, sizesMm } = question
  const barrelsMm = (2 * barrelUm) / 1000
  let best: number | undefined
  for (const drillMm of sizesMm) {
    const finishedMm = drillMm - barrelsMm
    if (finishedMm < minMm - HAIR_MM || finishedMm > maxMm + HAIR_MM) continue
    if (best === undefined || Math.abs(finishedMm - wantedMm) < Math.abs(best - barrelsMm - wantedMm))
      best = drillMm
  }
  return best === undefined ? undefined : { drillMm: best, finishedMm: Number((best - barrelsMm).toFixed(6)) }
}

/** Less than this is a rounding error of decimals, not a difference of holes. */
const HAIR_MM = 1e-9
