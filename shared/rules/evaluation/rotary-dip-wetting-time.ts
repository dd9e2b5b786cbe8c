import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { wettingTimeMost } from '@/shared/plan/limits/evaluation-solderability'
import { formatQuantity } from '@/shared/quantity/format'
import { moltenSolderCautions } from '@/shared/methods/solderability-conditions'
import { rule } from '@/shared/rules/rule'
import { judgeSampledLots } from '@/shared/sampling/judge-sampled-lots'
import { ROTARY_DIP } from '@/shared/sampling/sampled-method'
import { SAMPLING_SOURCES } from '@/shared/sampling/sampling-sources'
import { samplingReads } from '@/shared/sampling/sampling-reads'

/** Share of the wetting-time limit inside which a lot is only just good: the step of one dip to the next. */
const GUARD_SHARE = 0.1

export const rotaryDipWettingTime = rule({
  id: 'rotary-dip-wetting-time',
  title: 'Wetting time by rotary dip',
  why: 'A track or plated hole that wets slowly on clean solder will not fill in the seconds the wave gives it. A sample from every lot shows it before boards are built.',
  formula:
    'time to wet of each specimen ≤ most of the method at its temperature, flux and alloy; bad ≤ acceptance number',
  stage: 'evaluation',
  version: 2,
  reads: { ...samplingReads, most: wettingTimeMost },
  judge(inputs) {
    const { most } = inputs
    return judgeSampledLots(
      {
        method: ROTARY_DIP,
        ruling: most,
        guardBand: GUARD_SHARE * most.value,
        limitSays: `every place wetted within ${formatQuantity(most.value, 's')} (${namedRuling(most)}), in a sample by lot size`,
        sources: [sourceOf(most), ...SAMPLING_SOURCES],
        cautions: moltenSolderCautions,
      },
      inputs,
    )
  },
})
