import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** The classes of quality cost, in the usual division. */
export const COST_CLASSES = [
  { value: 'prevention', label: 'Prevention', ofFailure: false },
  { value: 'appraisal', label: 'Appraisal', ofFailure: false },
  { value: 'internal-failure', label: 'Internal failure', ofFailure: true },
  { value: 'external-failure', label: 'External failure', ofFailure: true },
] as const

/** Money spent on preventing, finding or mending defects. */
export const qualityCost = recordKind({
  key: 'quality-cost',
  label: 'quality cost',
  plural: 'Quality costs',
  help: 'One row per sum: what for, in which class. Rework and returns with a cost are added from their own records; do not enter them twice.',
  stage: 'assessment',
  departments: ['production', 'quality', 'design'],
  assemblies: null,
  teaches: false,
  columns: {
    spentOn: dateColumn({ label: 'Spent on' }),
    costClass: choiceColumn({ label: 'Class', options: COST_CLASSES }),
    amount: numberColumn({ label: 'Amount', unit: 'currency', min: 0, max: 1e9 }),
    what: textColumn({ label: 'What for', maxLength: 200 }),
    decision: optionalColumn(
      textColumn({
        label: 'Decision behind it',
        maxLength: 80,
        help: 'The item or option study that caused or saved it.',
      }),
    ),
  },
  cautions: [],
})
