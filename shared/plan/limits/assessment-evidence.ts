import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import { limit, type Limit, type LimitRange } from '@/shared/plan/requirement'

/** How surely something counted has to be shown, and how much has to be seen before it says anything. */

const confidence = (key: string, label: string, practice: string): Limit =>
  limit({
    key: `${key}-confidence-least`,
    label,
    unit: '%',
    direction: 'at least',
    byDefault: { value: 95, authority: 'common practice', from: commonPractice(practice) },
  })

export const firstPassYieldConfidenceMin = confidence(
  'first-pass-yield',
  'Confidence with which the first-pass yield is shown',
  'Yields shown at 95 % one-sided confidence',
)
export const inspectorKappaConfidenceMin = confidence(
  'inspector-kappa',
  'Confidence with which inspectors’ agreement is shown',
  'Agreement shown at 95 % one-sided confidence',
)

export const directionChanceMax = limit({
  key: 'direction-chance-most',
  label: 'Chance so small that a class of joints is named as worse, over all comparisons together',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 5,
    authority: 'common practice',
    from: commonPractice('Tests of significance at 5 %'),
  },
})

export const extractedAssembliesMin = limit({
  key: 'extracted-assemblies-least',
  label: 'Assemblies extracted to show how clean they are',
  unit: 'boards',
  direction: 'at least',
  byDefault: {
    value: 3,
    authority: 'common practice',
    from: commonPractice(
      'Three assemblies of a production extracted at least: from its beginning, its middle and its end',
    ),
  },
})

export const insulationPatternsMin = limit({
  key: 'insulation-patterns-least',
  label: 'Patterns read in an insulation resistance test',
  unit: 'pieces',
  direction: 'at least',
  byDefault: {
    value: 3,
    authority: 'standard',
    from: fromMemory(
      'IPC-TM-650 2.6.3.3 and 2.6.3.7: three coupons of one preparation, one pattern of each counted',
    ),
  },
})

/** No solder joint wears out outside it: below, early failures; above, all at one instant. */
const WEIBULL_SHAPE: LimitRange = { min: 0.1, max: 20 }

/** Between these the worst is taken: the lower end where specimens outran a life, the upper where they fell short of one. */
export const wearOutShapeMin = limit({
  key: 'wear-out-shape-least',
  label: 'Least Weibull shape of wear-out presumed in a life test',
  unit: '1',
  direction: 'at most',
  within: WEIBULL_SHAPE,
  byDefault: {
    value: 2,
    authority: 'common practice',
    from: fromMemory(
      'IPC-D-279 and IPC-SM-785, after W. Engelmaier: shape 2 for joints of compliant leads, 4 for stiff ones',
    ),
  },
})
export const wearOutShapeMax = limit({
  key: 'wear-out-shape-most',
  label: 'Greatest Weibull shape of wear-out presumed in a life test',
  unit: '1',
  direction: 'at least',
  within: WEIBULL_SHAPE,
  byDefault: {
    value: 4,
    authority: 'common practice',
    from: fromMemory(
      'IPC-D-279 and IPC-SM-785, after W. Engelmaier: shape 2 for joints of compliant leads, 4 for stiff ones',
    ),
  },
})
