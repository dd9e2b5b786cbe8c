import { commonPractice } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const capabilityLeast = limit({
  key: 'capability-least',
  label: 'Capability of a process characteristic (Cpk)',
  unit: '1',
  direction: 'at least',
  byDefault: {
    value: 1.33,
    authority: 'common practice',
    from: commonPractice('Cpk of 1.33 and more: four standard deviations to the nearer limit'),
  },
})
