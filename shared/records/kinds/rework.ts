import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { DEFECT_KINDS } from '@/shared/records/inspection'
import { recordKind } from '@/shared/records/record-kind'

/** A joint soldered again. */
export const rework = recordKind({
  key: 'rework',
  label: 'rework',
  plural: 'Rework',
  help: 'One row per joint and time it was worked on: why, how often it was heated, how long it took.',
  stage: 'assessment',
  departments: ['production'],
  assemblies: { column: 'assembly', one: true },
  teaches: true,
  columns: {
    doneOn: dateColumn({ label: 'Done on' }),
    worker: textColumn({ label: 'Worker', maxLength: 80 }),
    assembly: textColumn({ label: 'Assembly', maxLength: 40 }),
    joint: textColumn({ label: 'Joint', maxLength: 40 }),
    defect: choiceColumn({
      label: 'Because of',
      options: [
        ...DEFECT_KINDS.map((kind) => ({ value: kind, label: kind })),
        { value: 'component', label: 'component exchanged' },
        { value: 'change', label: 'design change' },
      ],
    }),
    heats: numberColumn({
      label: 'Times heated',
      unit: 'cycles',
      min: 1,
      max: 20,
      whole: true,
      help: 'Taking solder out and soldering again are two.',
    }),
    minutes: numberColumn({ label: 'Time spent', unit: 'min', min: 0, max: 10_000 }),
    material: optionalColumn(numberColumn({ label: 'Material', unit: 'currency', min: 0, max: 1e9 })),
  },
  cautions: ['Hot metal, and fume at the face: use extraction; wash hands after handling leaded solder.'],
})
