import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const trainingValidMax = limit({
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

export const trainingNoticeMin = limit({
  key: 'training-notice-least',
  label: 'Left of a training after its last use',
  unit: 'days',
  direction: 'at least',
  byDefault: {
    value: 30,
    authority: 'common practice',
    from: commonPractice('A month before it runs out a training is renewed, so that nobody stands idle'),
  },
})
