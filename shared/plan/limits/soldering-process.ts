import { commonPractice } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const handJointsMax = limit({
  key: 'hand-joints-most',
  label: 'Joints by hand in a year',
  unit: 'joints',
  direction: 'at most',
  byDefault: {
    value: 500_000,
    authority: 'common practice',
    from: commonPractice('About what two people solder in a year at 20 s a joint; more asks for a machine'),
  },
})

export const processExcessMax = limit({
  key: 'process-excess-most',
  label: 'Cost of the chosen process over the cheapest',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 10,
    authority: 'common practice',
    from: commonPractice('Cost estimates of processes are good to about a tenth'),
  },
})
