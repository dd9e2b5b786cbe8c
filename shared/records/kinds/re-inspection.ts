import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { DEFECT_KINDS } from '@/shared/records/inspection'
import { recordKind } from '@/shared/records/record-kind'

/** A reworked joint looked at again. */
export const reInspection = recordKind({
  key: 're-inspection',
  label: 're-inspection',
  plural: 'Re-inspections',
  help: 'One row per reworked joint that was inspected again: sound now, or what is still at fault.',
  stage: 'assessment',
  departments: ['quality'],
  assemblies: { column: 'assembly', one: true },
  teaches: false,
  columns: {
    inspectedOn: dateColumn({ label: 'Inspected on' }),
    inspector: textColumn({ label: 'Inspector', maxLength: 80 }),
    assembly: textColumn({ label: 'Assembly', maxLength: 40 }),
    joint: textColumn({ label: 'Joint', maxLength: 40 }),
    outcome: choiceColumn({
      label: 'Found',
      options: [
        { value: 'sound', label: 'sound' },
        ...DEFECT_KINDS.map((kind) => ({ value: kind, label: kind })),
      ],
    }),
    magnification: numberColumn({ label: 'Magnification', unit: '×', min: 1, max: 100 }),
    note: optionalColumn(textColumn({ label: 'Note', maxLength: 300 })),
  },
  cautions: [],
})
