import { fromMemory } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

/** How long a lot's own result stands for it in store. */
export const reaffirmationAgeMax = limit({
  key: 'reaffirmation-age-most',
  label: 'Age of a lot’s newest solderability result while it waits in store',
  unit: 'days',
  direction: 'at most',
  byDefault: {
    value: 120,
    authority: 'standard',
    from: fromMemory(
      'MIL-STD-2000, 5.4.4, solderability control, option 1: soldered within 120 days after a pass',
    ),
  },
})
