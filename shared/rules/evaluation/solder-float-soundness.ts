import { fromMemory } from '@/shared/sources/provenance'
import { solderFloat } from '@/shared/methods/solder-float'
import { formatQuantity } from '@/shared/quantity/format'
import { sourceOf } from '@/shared/rules/governing-source'
import { rule } from '@/shared/rules/rule'
import { judgeSampledLots } from '@/shared/sampling/judge-sampled-lots'
import { SOLDER_FLOAT } from '@/shared/lot-tests/sampled-methods'
import { samplingReads } from '@/shared/sampling/sampling-reads'

const SOURCE = fromMemory(
  'IPC-TM-650 2.4.13.1, thermal stress of laminates: 288 °C for 10 s, no blister or delamination',
)

export const solderFloatSoundness = rule({
  id: 'solder-float-soundness',
  title: 'Laminate sound after floating on solder',
  why: 'A laminate that blisters or delaminates on the bath fails in the wave as well, board by board and after the parts are in.',
  formula: 'each specimen sound after its float; bad ≤ acceptance number',
  stage: 'evaluation',
  version: 4,
  reads: samplingReads,
  judge: (inputs) =>
    judgeSampledLots(
      {
        method: SOLDER_FLOAT,
        governing: { value: 0 },
        guardBand: 0,
        limitMessage: `every specimen sound after ${formatQuantity(inputs.floatTime.value, 's')} or more at ${formatQuantity(inputs.floatTemperature.value, '°C')} or more, in a sample by lot size`,
        sources: [SOURCE, sourceOf(inputs.floatTemperature)],
        notes: ['The float tests the material’s resistance to heat; it says nothing about solderability.'],
        cautions: solderFloat.cautions,
      },
      inputs,
    ),
})
