import { numberColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** One reading of a gauge study; a study is all rows that bear its name. */
export const gaugeReading = recordKind({
  key: 'gauge-reading',
  label: 'gauge-study reading',
  plural: 'gauge-study readings',
  help: 'A study has several people measure the same parts several times without knowing the earlier results; every person measures every part equally often. Import the rows of one study together.',
  stage: 'evaluation',
  departments: ['quality', 'production'],
  assemblies: null,
  teaches: false,
  columns: {
    study: textColumn({ label: 'Study', maxLength: 60 }),
    instrumentTag: textColumn({ label: 'Instrument', maxLength: 60, help: 'The number on its label.' }),
    part: textColumn({ label: 'Part measured', maxLength: 40 }),
    appraiser: textColumn({ label: 'Measured by', maxLength: 60 }),
    trial: numberColumn({ label: 'Trial', unit: '1', min: 1, max: 20, whole: true }),
    reading: numberColumn({ label: 'Reading', unit: '1', min: -1e6, max: 1e6 }),
  },
  cautions: [],
})
