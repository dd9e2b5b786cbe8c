import { limit } from '@/shared/plan/requirement'
import { commonPractice, fromMemory, published } from '@/shared/sources/provenance'

/** What soldering irons are held to. Three checks that are often confused: ceiling, accuracy, hold. */

export const tipCeilingTinLead = limit({
  key: 'tip-ceiling-tin-lead-most',
  label: 'Hottest tip for tin-lead',
  unit: '°C',
  direction: 'at most',
  byDefault: {
    value: 316,
    authority: 'standard',
    from: published('TM 9-243: rosin carbonises above 600 °F (316 °C); ESA PSS-01-738, 3.5.7 ends at 320 °C'),
  },
})

export const tipCeilingLeadFree = limit({
  key: 'tip-ceiling-lead-free-most',
  label: 'Hottest tip for lead-free',
  unit: '°C',
  direction: 'at most',
  byDefault: {
    value: 385,
    authority: 'common practice',
    from: fromMemory(
      'Lead-free hand soldering at 340 to 385 °C; printed advice reaches 399 °C for heavy multilayers',
    ),
  },
})

/** The strictest edition; the edition chosen may be looser. */
export const tipAccuracyMax = limit({
  key: 'tip-accuracy-most',
  label: 'Tip at rest from its setting, ±',
  unit: 'K',
  direction: 'at most',
  byDefault: {
    value: 5.5,
    authority: 'standard',
    from: fromMemory('NASA-STD-8739.3 / MIL-STD-2000: idle tip within 10 °F (5.5 K) of its setting'),
  },
})
export const TIP_ACCURACY_BY_EDITION = {
  'j-std-001': { value: 15, from: published('J-STD-001, appendix A-2 c: within 15 K of the setting') },
  'nasa-8739': {
    value: 5.5,
    from: fromMemory('NASA-STD-8739.3 / MIL-STD-2000: idle tip within 10 °F (5.5 K) of its setting'),
  },
} as const

export const tipHoldMax = limit({
  key: 'tip-hold-most',
  label: 'Drift of an idle tip between checks at one setting, ±',
  unit: 'K',
  direction: 'at most',
  byDefault: {
    value: 5,
    authority: 'standard',
    from: published(
      'J-STD-001, appendix A-2 b: a temperature-controlled iron holds its idle temperature within 5 K',
    ),
  },
})

export const tipCheckInterval = limit({
  key: 'tip-check-interval-most',
  label: 'Age of the newest tip check when an iron is used',
  unit: 'days',
  direction: 'at most',
  byDefault: {
    value: 7,
    authority: 'common practice',
    from: commonPractice('Tip temperature checked weekly; as-found readings may lengthen or shorten it'),
  },
})

/** The strictest edition; the edition chosen may be looser. */
export const tipGroundMax = limit({
  key: 'tip-ground-most',
  label: 'Resistance from tip to ground',
  unit: 'Ω',
  direction: 'at most',
  byDefault: { value: 2, authority: 'standard', from: published('DOD-STD-2000: 2 Ω from tip to ground') },
})
export const TIP_GROUND_BY_EDITION = {
  'j-std-001': { value: 5, from: published('MIL-STD-2000A; J-STD-001B, appendix A: 5 Ω from tip to ground') },
  'nasa-8739': { value: 2, from: fromMemory('NASA-STD-8739.3: 2 Ω from tip to ground') },
} as const

export const tipLeakageMax = limit({
  key: 'tip-leakage-most',
  label: 'Leakage voltage at the tip',
  unit: 'mV',
  direction: 'at most',
  byDefault: {
    value: 2,
    authority: 'standard',
    from: published('DOD-STD-2000: 2 mV at the tip (J-STD-001B gives no figure)'),
  },
})

export const groundCheckInterval = limit({
  key: 'tip-ground-interval-most',
  label: 'Age of the newest ground check when an iron is used',
  unit: 'days',
  direction: 'at most',
  byDefault: {
    value: 365,
    authority: 'common practice',
    from: commonPractice('Irons checked electrically once a year at least; the shop’s record may shorten it'),
  },
})
