import { commonPractice, fromMemory, published } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

export const solidusMarginMin = limit({
  key: 'solidus-margin-least',
  label: 'Solidus of the alloy over the service temperature',
  unit: 'K',
  direction: 'at least',
  byDefault: {
    value: 60,
    authority: 'common practice',
    from: commonPractice('Joints are kept well below the solidus; solder creeps at any service temperature'),
  },
})

export const restrictedLeadMax = limit({
  key: 'restricted-lead-most',
  label: 'Lead in a homogeneous material, where restricted',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 0.1,
    authority: 'standard',
    from: published('Directive 2011/65/EU, Annex II: lead 0.1 % by weight in homogeneous materials'),
  },
})

export const insulationWithResidueMax = limit({
  key: 'insulation-with-residue-most',
  label: 'Insulation that may be counted on with flux residue left',
  unit: 'MΩ',
  direction: 'at most',
  byDefault: {
    value: 100,
    authority: 'standard',
    from: fromMemory('J-STD-004, surface insulation resistance of a flux: at least 100 MΩ'),
  },
})
