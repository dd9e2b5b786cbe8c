import { dateColumn, numberColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** How many boards served how long: the exposure that returns are counted against. */
export const fieldExposure = recordKind({
  key: 'field-exposure',
  label: 'service exposure',
  plural: 'Service exposure',
  help: 'One row per period: boards in service and hours each ran in it. Periods must not overlap.',
  stage: 'assessment',
  departments: ['quality'],
  assemblies: null,
  teaches: false,
  columns: {
    from: dateColumn({ label: 'From' }),
    to: dateColumn({ label: 'To' }),
    boards: numberColumn({ label: 'Boards in service', unit: 'boards', min: 0, max: 1e8, whole: true }),
    hoursEach: numberColumn({ label: 'Hours each', unit: 'h', min: 0, max: 1e6 }),
    source: textColumn({ label: 'Where the count comes from', maxLength: 120 }),
  },
  cautions: [],
})
