import { SHOWN_SHARE } from '@/shared/plan/limit-range'
import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

/** How much of a lot's plating has to reach its minimum, and how surely. */

export const platingCoverageMin = limit({
  key: 'plating-coverage-least',
  label: 'Share of the plating that must reach its minimum',
  unit: '%',
  direction: 'at least',
  within: SHOWN_SHARE,
  byDefault: {
    value: 95,
    authority: 'common practice',
    from: commonPractice('One-sided tolerance bound, 95 % covered with 95 % confidence'),
  },
})

export const platingConfidenceMin = limit({
  key: 'plating-confidence-least',
  label: 'Confidence in that share',
  unit: '%',
  direction: 'at least',
  within: SHOWN_SHARE,
  byDefault: {
    value: 95,
    authority: 'common practice',
    from: commonPractice('One-sided tolerance bound, 95 % covered with 95 % confidence'),
  },
})

export const platingCapabilityMin = limit({
  key: 'plating-capability-least',
  label: 'Capability of the plating against its minimum',
  unit: '1',
  direction: 'at least',
  byDefault: {
    value: 0.67,
    authority: 'common practice',
    from: commonPractice('Two standard deviations between mean and minimum of a bought-in coating'),
  },
})

export const holeCopperMin = limit({
  key: 'hole-copper-least',
  label: 'Copper on the wall of a plated hole',
  unit: 'µm',
  direction: 'at least',
  byDefault: {
    value: 25,
    authority: 'standard',
    from: fromMemory('IPC-6012 class 3 and MIL-P-55110: 25 µm (20 µm for classes 1 and 2 of IPC-6012)'),
  },
})
