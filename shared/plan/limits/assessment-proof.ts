import { SHOWN_SHARE } from '@/shared/plan/limit-range'
import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

/** What further proof has to show where it is asked for. */

export const inspectorKappaMin = limit({
  key: 'inspector-kappa-least',
  label: 'Agreement of inspectors beyond chance (kappa)',
  unit: '1',
  direction: 'at least',
  byDefault: {
    value: 0.75,
    authority: 'common practice',
    from: fromMemory('Attribute studies of measurement systems analysis: kappa above 0.75 is good agreement'),
  },
})

export const sectionFillMin = limit({
  key: 'section-fill-least',
  label: 'Hole filled with solder in a microsection',
  unit: '%',
  direction: 'at least',
  byDefault: {
    value: 75,
    authority: 'standard',
    from: fromMemory('IPC-A-610, vertical fill of a plated hole: 75 % in classes 2 and 3'),
  },
})

export const sectionVoidMax = limit({
  key: 'section-void-most',
  label: 'Voids in a microsection, share of the area',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 25,
    authority: 'common practice',
    from: commonPractice('Voids to a quarter of the section'),
  },
})

export const sectionAngleMax = limit({
  key: 'section-angle-most',
  label: 'Contact angle in a microsection',
  unit: '°',
  direction: 'at most',
  byDefault: {
    value: 90,
    authority: 'standard',
    from: fromMemory('IPC-A-610: wetting with a contact angle of 90° at most'),
  },
})

export const sectionIntermetallicMin = limit({
  key: 'section-intermetallic-least',
  label: 'Intermetallic layer in a microsection, thinnest',
  unit: 'µm',
  direction: 'at least',
  byDefault: {
    value: 0.5,
    authority: 'common practice',
    from: commonPractice(
      'A continuous layer of half a micrometre and more shows that the solder wetted and reacted',
    ),
  },
})

export const sectionIntermetallicMax = limit({
  key: 'section-intermetallic-most',
  label: 'Intermetallic layer in a microsection, thickest',
  unit: 'µm',
  direction: 'at most',
  byDefault: {
    value: 5,
    authority: 'common practice',
    from: commonPractice(
      'One to five micrometres after soldering; thicker layers are brittle and tell of too much heat',
    ),
  },
})

export const demonstrationConfidenceMin = limit({
  key: 'demonstration-confidence-least',
  label: 'Confidence of a life test and of field counts',
  unit: '%',
  direction: 'at least',
  within: SHOWN_SHARE,
  byDefault: {
    value: 90,
    authority: 'common practice',
    from: commonPractice('Demonstrations of reliability at 90 % one-sided confidence'),
  },
})
