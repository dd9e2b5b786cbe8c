/**
 * The preferred drill whose finished hole lies nearest to the one wanted, with
 * twice the wall metal taken off the drill. Undefined when the series has none
 * that leaves a finished hole inside the bounds.
 *
 * Units: mm, wall metal in µm. `sizesMm` ascending.
 */
export function nearestDrill(question: {
  readonly wantedMm: number
  readonly leastMm: number
  readonly mostMm: number
  readonly wallUm: number
  readonly sizesMm: readonly number[]
}): { drillMm: number; finishedMm: number } | undefined {
  const { wantedMm, leastMm, mostMm, wallUm, sizesMm } = question
  const wallsMm = (2 * wallUm) / 1000
  let best: number | undefined
  for (const drillMm of sizesMm) {
    const finishedMm = drillMm - wallsMm
    if (finishedMm < leastMm - HAIR_MM || finishedMm > mostMm + HAIR_MM) continue
    if (best === undefined || Math.abs(finishedMm - wantedMm) < Math.abs(best - wallsMm - wantedMm))
      best = drillMm
  }
  return best === undefined ? undefined : { drillMm: best, finishedMm: Number((best - wallsMm).toFixed(6)) }
}

/** Less than this is binary dust of decimals, not a difference of holes. */
const HAIR_MM = 1e-9
