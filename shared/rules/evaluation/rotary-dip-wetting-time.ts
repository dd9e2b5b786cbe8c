import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { wettingTimeGuard } from '@/shared/plan/limits/evaluation-guards'
import { formatQuantity } from '@/shared/quantity/format'
import { moltenSolderCautions } from '@/shared/methods/solderability-conditions'
import { rule } from '@/shared/rules/rule'
import { judgeSampledLots } from '@/shared/sampling/judge-sampled-lots'
import { ROTARY_DIP } from '@/shared/lot-tests/sampled-methods'
import { samplingReads } from '@/shared/sampling/sampling-reads'

export const rotaryDipWettingTime = rule({
  id: 'rotary-dip-wetting-time',
  title: 'Wetting time by rotary dip',
  why: 'A track or plated hole that wets slowly on clean solder will not fill in the seconds the wave gives it. A sample from every lot shows it before boards are built.',
  formula:
    'time to wet of each specimen ≤ most of the method at its temperature, flux and alloy; nonconforming ≤ acceptance number',
  stage: 'evaluation',
  version: 4,
  reads: { ...samplingReads, guard: wettingTimeGuard },
  judge(inputs) {
    const { wettingTime: max, guard } = inputs
    return judgeSampledLots(
      {
        method: ROTARY_DIP,
        governing: max,
        guardBand: (guard.value / 100) * max.value,
        limitMessage: `every place wetted within ${formatQuantity(max.value, 's')} (${governingName(max)}), in a sample by lot size`,
        sources: [sourceOf(max)],
        cautions: moltenSolderCautions,
      },
      inputs,
    )
  },
})
