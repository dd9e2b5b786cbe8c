import { fromMemory } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const trainingValidMost = limit({
  key: 'training-valid-most',
  label: 'How long an examination passed is valid',
  unit: 'months',
  direction: 'at most',
  byDefault: {
    value: 24,
    authority: 'common practice',
    from: fromMemory('Workmanship certification of the trade runs for 24 months'),
  },
})
