import { limit } from '@/shared/plan/requirement'

/** How much of a lot's plating has to reach its minimum, and how surely. */

export const platingCoverageLeast = limit({
  key: 'plating-coverage-least',
  label: 'Share of the plating that must reach its minimum',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 95,
    authority: 'common practice',
    from: {
      cite: 'One-sided tolerance bound, 95 % covered with 95 % confidence',
      how: 'common practice, no published source',
    },
  },
})

export const platingConfidenceLeast = limit({
  key: 'plating-confidence-least',
  label: 'Confidence in that share',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 95,
    authority: 'common practice',
    from: {
      cite: 'One-sided tolerance bound, 95 % covered with 95 % confidence',
      how: 'common practice, no published source',
    },
  },
})

export const platingCapabilityLeast = limit({
  key: 'plating-capability-least',
  label: 'Capability of the plating against its minimum',
  unit: '1',
  direction: 'at least',
  byDefault: {
    value: 1,
    authority: 'common practice',
    from: {
      cite: 'Three standard deviations between mean and minimum, of a bought-in process',
      how: 'common practice, no published source',
    },
  },
})
