import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** A board that came back from service. */
export const fieldReturn = recordKind({
  key: 'field-return',
  label: 'field return',
  plural: 'Field returns',
  help: 'One row per board that came back: when, after how long, and what was at fault.',
  stage: 'assessment',
  departments: ['quality'],
  assemblies: { column: 'assembly', one: true },
  teaches: true,
  columns: {
    returnedOn: dateColumn({ label: 'Came back on' }),
    assembly: textColumn({ label: 'Assembly', maxLength: 40 }),
    cause: choiceColumn({
      label: 'Cause',
      options: [
        { value: 'solder-joint', label: 'Solder joint' },
        { value: 'board', label: 'Board: barrel, track or laminate' },
        { value: 'component', label: 'Component' },
        { value: 'handling', label: 'Handling or misuse' },
        { value: 'no-fault', label: 'No fault found' },
        { value: 'open', label: 'Not yet analysed' },
      ],
    }),
    jointsFailed: numberColumn({
      label: 'Joints that failed',
      unit: 'joints',
      min: 0,
      max: 10_000,
      whole: true,
    }),
    hours: optionalColumn(numberColumn({ label: 'Hours in service', unit: 'h', min: 0, max: 1e6 })),
    joint: optionalColumn(textColumn({ label: 'Joint', maxLength: 40 })),
    lesson: optionalColumn(textColumn({ label: 'Lesson', maxLength: 400 })),
    cost: optionalColumn(numberColumn({ label: 'Cost', unit: 'currency', min: 0, max: 1e9 })),
  },
  cautions: [],
})
