import { SHOWN_SHARE } from '@/shared/plan/limit-range'
import { commonPractice } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const capabilityMin = limit({
  key: 'capability-least',
  label: 'Capability and performance of a process characteristic (Cpk and Ppk)',
  unit: '1',
  direction: 'at least',
  byDefault: {
    value: 1.33,
    authority: 'common practice',
    from: commonPractice('Cpk and Ppk of 1.33 and more: four standard deviations to the nearer limit'),
  },
})

export const capabilityConfidenceMin = limit({
  key: 'capability-confidence-least',
  label: 'Confidence with which capability is shown',
  unit: '%',
  direction: 'at least',
  within: SHOWN_SHARE,
  byDefault: {
    value: 95,
    authority: 'common practice',
    from: commonPractice('Capability shown at 95 % one-sided confidence'),
  },
})
