import { commonPractice, fromMemory } from '@/shared/sources/provenance'
import { limit } from '@/shared/plan/requirement'

/** What is asked of the instruments that tests rest on. */

export const calibrationNoticeMin = limit({
  key: 'calibration-notice-least',
  label: 'Notice before a calibration runs out',
  unit: 'days',
  direction: 'at least',
  byDefault: {
    value: 30,
    authority: 'common practice',
    from: commonPractice('A month to send an instrument away'),
  },
})

export const gaugeShareMax = limit({
  key: 'gauge-share-most',
  label: 'Repeatability and reproducibility, share of the study’s variation',
  unit: '%',
  direction: 'at most',
  byDefault: {
    value: 30,
    authority: 'common practice',
    from: fromMemory(
      'Measurement Systems Analysis, 4th edition (AIAG): under 10 % good, over 30 % not acceptable',
    ),
  },
})

export const distinctCategoriesMin = limit({
  key: 'gauge-categories-least',
  label: 'Categories the instrument can tell apart',
  unit: '1',
  direction: 'at least',
  byDefault: {
    value: 5,
    authority: 'common practice',
    from: fromMemory('Measurement Systems Analysis, 4th edition (AIAG): five distinct categories or more'),
  },
})

const studySize = fromMemory(
  'Measurement Systems Analysis, 4th edition (AIAG): ten parts, two or three appraisers, two or three trials',
)

export const studyPartsMin = limit({
  key: 'gauge-study-parts-least',
  label: 'Pieces in a gauge study',
  unit: '1',
  direction: 'at least',
  byDefault: { value: 10, authority: 'common practice', from: studySize },
})

export const studyPeopleMin = limit({
  key: 'gauge-study-people-least',
  label: 'People in a gauge study',
  unit: '1',
  direction: 'at least',
  byDefault: { value: 2, authority: 'common practice', from: studySize },
})
