import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { holeRiseMin } from '@/shared/plan/limits/evaluation-solderability'
import { formatQuantity } from '@/shared/quantity/format'
import { moltenSolderCautions } from '@/shared/methods/solderability-conditions'
import { rule } from '@/shared/rules/rule'
import { judgeSampledLots } from '@/shared/sampling/judge-sampled-lots'
import { HOLE_RISE } from '@/shared/lot-tests/sampled-methods'
import { samplingReads } from '@/shared/sampling/sampling-reads'

export const platedHoleRise = rule({
  id: 'plated-hole-rise',
  title: 'Rise of solder in plated holes',
  why: 'Capillarity could lift solder through many board thicknesses. A hole that does not fill on the test bath has a wall that does not wet, or that gives off gas.',
  formula: 'rise of solder in each hole ≥ least of the method; nonconforming specimens ≤ acceptance number',
  stage: 'evaluation',
  version: 4,
  reads: { ...samplingReads, min: holeRiseMin },
  judge(inputs) {
    const { min } = inputs
    return judgeSampledLots(
      {
        method: HOLE_RISE,
        governing: min,
        // A rise cannot exceed the whole hole, so there is no room for a guard band.
        guardBand: 0,
        limitMessage: `solder risen through at least ${formatQuantity(min.value, '%')} of every hole (${governingName(min)}), in a sample by lot size`,
        sources: [sourceOf(min)],
        cautions: moltenSolderCautions,
      },
      inputs,
    )
  },
})
