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
  let best: { drillMm: number; finishedMm: number } | undefined
  for (const drillMm of sizesMm) {
    const finishedMm = Number((drillMm - (2 * wallUm) / 1000).toFixed(6))
    if (finishedMm < leastMm || finishedMm > mostMm) continue
    if (!best || Math.abs(finishedMm - wantedMm) < Math.abs(best.finishedMm - wantedMm)) {
      best = { drillMm, finishedMm }
    }
  }
  return best
}
