import { choiceColumn, dateColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** Earlier calibrations, and how an instrument was found: what the newest certificate cannot say. */
export const calibrationRecord = recordKind({
  key: 'calibration',
  label: 'calibration',
  plural: 'calibrations',
  help: 'One row per certificate, old ones included: a test made before the newest calibration is covered by the one before it. State how the instrument was found on arrival.',
  stage: 'evaluation',
  departments: ['quality'],
  assemblies: null,
  teaches: false,
  columns: {
    instrumentTag: textColumn({ label: 'Instrument', maxLength: 60, help: 'The number on its label.' }),
    calibratedOn: dateColumn({ label: 'Calibrated on' }),
    dueOn: dateColumn({ label: 'Due again on', mayLieAhead: true }),
    found: choiceColumn({
      label: 'Found on arrival',
      options: [
        { value: 'within', label: 'Within its limits' },
        { value: 'outside', label: 'Outside its limits' },
        { value: 'not stated', label: 'Not stated' },
      ],
    }),
    certificate: textColumn({ label: 'Certificate', maxLength: 80 }),
  },
  cautions: [],
})
