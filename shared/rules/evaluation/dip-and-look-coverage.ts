import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { coverageMin } from '@/shared/plan/limits/evaluation-solderability'
import { coverageGuard } from '@/shared/plan/limits/evaluation-guards'
import { formatQuantity } from '@/shared/quantity/format'
import { moltenSolderCautions } from '@/shared/methods/solderability-conditions'
import { rule } from '@/shared/rules/rule'
import { judgeSampledLots } from '@/shared/sampling/judge-sampled-lots'
import { DIP_AND_LOOK } from '@/shared/lot-tests/sampled-methods'
import { samplingReads } from '@/shared/sampling/sampling-reads'

export const dipAndLookCoverage = rule({
  id: 'dip-and-look-coverage',
  title: 'Coverage by dip and look',
  why: 'A lead that takes no even coating in clean solder leaves a joint that looks filled and is not held. The look tells non-wetting from dewetting, whose causes differ.',
  formula: 'coverage of each specimen ≥ least; nonconforming specimens ≤ acceptance number of the plan',
  stage: 'evaluation',
  version: 5,
  reads: { ...samplingReads, min: coverageMin, guard: coverageGuard },
  judge(inputs) {
    const { min, guard } = inputs
    return judgeSampledLots(
      {
        method: DIP_AND_LOOK,
        governing: min,
        guardBand: guard.value,
        limitMessage: `at least ${formatQuantity(min.value, '%')} of the dipped area covered (${governingName(min)}), in a sample by lot size`,
        sources: [sourceOf(min)],
        cautions: moltenSolderCautions,
      },
      inputs,
    )
  },
})
