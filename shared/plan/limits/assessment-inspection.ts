import { SHOWN_SHARE } from '@/shared/plan/limit-range'
import { commonPractice } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const magnificationMax = limit({
  key: 'magnification-most',
  label: 'Magnification of visual inspection',
  unit: '×',
  direction: 'at most',
  byDefault: {
    value: 10,
    authority: 'common practice',
    from: commonPractice(
      'Joints are inspected at ten times at most; more only to settle a doubt already raised',
    ),
  },
})

export const inspectedJointsMin = limit({
  key: 'inspected-joints-least',
  label: 'Joints inspected on each assembly',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 100,
    authority: 'common practice',
    from: commonPractice('Where an assembly is inspected, every joint of it is'),
  },
})

export const budgetConfidenceMin = limit({
  key: 'budget-confidence-least',
  label: 'Confidence with which the defect budget is shown',
  unit: '%',
  direction: 'at least',
  within: SHOWN_SHARE,
  byDefault: {
    value: 95,
    authority: 'common practice',
    from: commonPractice('Demonstrations of quality at 95 % one-sided confidence'),
  },
})

export const firstPassYieldMin = limit({
  key: 'first-pass-yield-least',
  label: 'First-pass yield of electrical test',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 95,
    authority: 'common practice',
    from: commonPractice('First-pass yield of a settled assembly, 95 % and more'),
  },
})
