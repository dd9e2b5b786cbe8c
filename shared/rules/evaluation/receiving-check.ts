import { commonPractice } from '@/shared/sources/provenance'
import { rule } from '@/shared/rules/rule'
import { judgeSampledLots } from '@/shared/sampling/judge-sampled-lots'
import { RECEIVING_CHECK } from '@/shared/lot-tests/sampled-methods'
import { samplingReads } from '@/shared/sampling/sampling-reads'

const SOURCE = commonPractice('Receiving inspection: the delivery against the order and its certificate')

export const receivingCheck = rule({
  id: 'receiving-check',
  title: 'Deliveries as ordered',
  why: 'A test result belongs to the part that was ordered. The wrong revision, finish or date code makes every later result a result about something else.',
  formula: 'each piece as ordered in all that was compared, its part and revision among it',
  stage: 'evaluation',
  version: 5,
  reads: samplingReads,
  judge: (inputs) =>
    judgeSampledLots(
      {
        method: RECEIVING_CHECK,
        governing: { value: 0 },
        guardBand: 0,
        limitMessage: 'everything compared as ordered, in a sample by lot size',
        sources: [SOURCE],
      },
      inputs,
    ),
})
