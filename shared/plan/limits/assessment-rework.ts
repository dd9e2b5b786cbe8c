import { commonPractice } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const reworkHeatsMax = limit({
  key: 'rework-heats-most',
  label: 'Heats of one joint in rework, all visits together',
  unit: 'cycles',
  direction: 'at most',
  byDefault: {
    value: 3,
    authority: 'common practice',
    from: commonPractice('A joint is heated three times at most in rework: barrels and lands tire'),
  },
})
