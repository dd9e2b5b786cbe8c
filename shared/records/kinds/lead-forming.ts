import { dateColumn, flagColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'

/** A check of formed component leads. */
export const leadForming = recordKind({
  key: 'lead-forming',
  label: 'lead forming check',
  plural: 'Lead forming checks',
  help: 'One row per check: the part, its lead, the bend as measured and what the lead looks like.',
  stage: 'control',
  departments: ['production'],
  assemblies: null,
  teaches: false,
  columns: {
    checkedOn: dateColumn({ label: 'Checked on' }),
    worker: textColumn({ label: 'Worker', maxLength: 80 }),
    part: textColumn({ label: 'Part', maxLength: 60 }),
    leadDiameterMm: numberColumn({ label: 'Lead diameter or thickness', unit: 'mm', min: 0.05, max: 5 }),
    insideRadiusMm: numberColumn({ label: 'Inside bend radius', unit: 'mm', min: 0, max: 50 }),
    straightMm: numberColumn({
      label: 'Straight length before the bend',
      unit: 'mm',
      min: 0,
      max: 50,
      help: 'From the end of body, coating or weld bead.',
    }),
    marked: flagColumn({
      label: 'Nicked, cracked or plating broken',
      help: 'Whether the tool has left more than a light mark.',
    }),
    tool: optionalColumn(textColumn({ label: 'Tool', maxLength: 60 })),
  },
  cautions: ['Wear eye protection when leads are cut: the ends fly.'],
})
