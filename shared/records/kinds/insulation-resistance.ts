import { choiceColumn, dateColumn, numberColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'
import { INSULATION_CONDITIONS } from '@/shared/materials/insulation-conditions'

/** A reading of surface insulation resistance in a damp chamber. */
export const insulationResistance = recordKind({
  key: 'insulation-resistance',
  label: 'insulation resistance reading',
  plural: 'Insulation resistance readings',
  help: 'One row per pattern and reading: the condition, hours in the chamber, resistance.',
  stage: 'assessment',
  departments: ['quality'],
  assemblies: null,
  teaches: false,
  columns: {
    testedOn: dateColumn({ label: 'Read on' }),
    pattern: textColumn({ label: 'Coupon and pattern', maxLength: 60 }),
    condition: choiceColumn({
      label: 'Test condition',
      options: Object.entries(INSULATION_CONDITIONS).map(([value, { label }]) => ({
        value: value as keyof typeof INSULATION_CONDITIONS,
        label,
      })),
    }),
    hours: numberColumn({ label: 'Hours in the chamber', unit: 'h', min: 0, max: 10_000 }),
    resistanceMOhm: numberColumn({ label: 'Resistance', unit: 'MΩ', min: 0, max: 1e9 }),
  },
  cautions: ['Patterns are under voltage in a damp chamber: switch off and discharge before reaching in.'],
})
