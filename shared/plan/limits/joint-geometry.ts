import { limit } from '@/shared/plan/requirement'
import { commonPractice, fromMemory } from '@/shared/sources/provenance'

export const leadProjectionMax = limit({
  key: 'lead-projection-most',
  label: 'Lead beyond the land, classes 1 and 2',
  unit: 'mm',
  direction: 'at most',
  byDefault: {
    value: 2.5,
    authority: 'standard',
    from: fromMemory(
      'IPC-A-610F, Table 7-3: 2.5 mm of class 2 in supported holes; of class 1, and of unsupported holes (Table 7-6), no danger of shorts, for which 2.5 mm is taken too',
    ),
  },
})

export const leadProjectionClass3Max = limit({
  key: 'lead-projection-class-3-most',
  label: 'Lead beyond the land of a plated hole, class 3',
  unit: 'mm',
  direction: 'at most',
  byDefault: {
    value: 1.5,
    authority: 'standard',
    from: fromMemory('IPC-A-610F, Table 7-3: 1.5 mm of class 3 in supported holes'),
  },
})

export const capillaryRiseMin = limit({
  key: 'capillary-rise-least',
  label: 'Rise of solder at rest over board thickness',
  unit: '×',
  direction: 'at least',
  byDefault: {
    value: 3,
    authority: 'common practice',
    from: commonPractice(
      'A rise at rest is counted on only where it is several times the board: flow ends when the solder freezes',
    ),
  },
})
