import { commonPractice } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const dewettingDropMax = limit({
  key: 'dewetting-drop-most',
  label: 'Fall of the wetting force after its peak',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 20,
    authority: 'common practice',
    from: commonPractice('Dewetting tolerated on a wetting balance'),
  },
})
