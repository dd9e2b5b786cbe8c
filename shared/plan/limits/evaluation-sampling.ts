import { OPEN_SHARE, SHOWN_SHARE } from '@/shared/plan/limit-range'
import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

/** What a sample has to prove, and what must not pass it. */

export const sampleConfidenceMin = limit({
  key: 'sample-confidence-least',
  label: 'Confidence in what a sample proves',
  unit: '%',
  direction: 'at least',
  within: SHOWN_SHARE,
  byDefault: {
    value: 95,
    authority: 'common practice',
    from: commonPractice('One-sided confidence of 95 %'),
  },
})

export const limitingQualityMax = limit({
  key: 'limiting-quality-most',
  label: 'Nonconforming pieces in a lot that the plan accepts one time in ten',
  unit: '%',
  direction: 'at most',
  within: OPEN_SHARE,
  byDefault: {
    value: 20,
    authority: 'common practice',
    from: commonPractice(
      'Near the 16.2 % of 13 pieces with none failing, the solderability sample of MIL-PRF-22684F 4.5.1.3.1.3',
    ),
  },
})

export const normalityMin = limit({
  key: 'variables-normality-least',
  label: 'Look at normality before a variables plan: least p value',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 5,
    authority: 'common practice',
    from: commonPractice('Readings whose Anderson–Darling p value is under 5 % are not judged as normal'),
  },
})

export const zeroAcceptanceQualityMax = limit({
  key: 'zero-acceptance-quality-most',
  label: 'Share of nonconforming pieces a zero-acceptance plan must find',
  unit: '%',
  direction: 'at most',
  within: OPEN_SHARE,
  byDefault: {
    value: 10,
    authority: 'standard',
    from: fromMemory('MIL-STD-883 method 2003, LTPD 10 (22 leads, none failing)'),
  },
})

export const zeroAcceptanceConfidenceMin = limit({
  key: 'zero-acceptance-confidence-least',
  label: 'Confidence of a zero-acceptance plan',
  unit: '%',
  direction: 'at least',
  within: SHOWN_SHARE,
  byDefault: {
    value: 90,
    authority: 'standard',
    from: fromMemory('MIL-STD-883 method 2003, LTPD 10 (22 leads, none failing)'),
  },
})
