import { dateColumn, flagColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** A joint cut open: what can only be seen by destroying it. */
export const microsection = recordKind({
  key: 'microsection',
  label: 'microsection',
  plural: 'Microsections',
  help: 'One row per joint cut and polished: the assembly is spent.',
  stage: 'assessment',
  departments: ['quality'],
  assemblies: { column: 'assembly', one: true },
  teaches: true,
  columns: {
    cutOn: dateColumn({ label: 'Cut on' }),
    assembly: textColumn({ label: 'Assembly', maxLength: 40 }),
    joint: textColumn({ label: 'Joint', maxLength: 40 }),
    by: textColumn({ label: 'By', maxLength: 80 }),
    fillPct: numberColumn({ label: 'Hole filled', unit: '%', min: 0, max: 100 }),
    contactAngleDeg: optionalColumn(numberColumn({ label: 'Contact angle', unit: '°', min: 0, max: 180 })),
    voidPct: optionalColumn(
      numberColumn({ label: 'Voids, share of the section', unit: '%', min: 0, max: 100 }),
    ),
    intermetallicUm: optionalColumn(
      numberColumn({
        label: 'Intermetallic layer',
        unit: 'µm',
        min: 0,
        max: 100,
        help: 'Mean thickness on the lead and the barrel, at high power after etching.',
      }),
    ),
    cracked: flagColumn({ label: 'Crack in joint or barrel' }),
  },
  cautions: [
    'Cutting, moulding and etching: guards, extraction and gloves as the materials’ safety data sheets say.',
  ],
})
