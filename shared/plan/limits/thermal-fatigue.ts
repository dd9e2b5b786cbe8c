import { OPEN_SHARE } from '@/shared/plan/limit-range'
import { commonPractice } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const fatigueShareFailedMax = limit({
  key: 'fatigue-share-failed-most',
  label: 'Leadless joints failed by fatigue at the end of service',
  unit: '%',
  direction: 'at most',
  within: OPEN_SHARE,
  byDefault: {
    value: 0.1,
    authority: 'common practice',
    from: commonPractice('Share of joints that fatigue may take over the service life'),
  },
})
