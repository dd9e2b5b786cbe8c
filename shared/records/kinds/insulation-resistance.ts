import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'
import { INSULATION_CONDITIONS } from '@/shared/materials/insulation-conditions'

const INSULATION_LOOKS = [
  { value: 'clean', label: 'No filament, no corrosion' },
  { value: 'short-filaments', label: 'Filaments over a fifth of the spacing at most' },
  { value: 'long-filaments', label: 'Filaments over more than a fifth of the spacing' },
  { value: 'corrosion', label: 'Corrosion of the conductors' },
] as const

/** A reading of surface insulation resistance in a damp chamber. */
export const insulationResistance = recordKind({
  key: 'insulation-resistance',
  label: 'insulation resistance reading',
  plural: 'Insulation resistance readings',
  help: 'One row per pattern and reading: the condition, hours in the chamber, resistance; with the last row, what is seen on the pattern taken out.',
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
    instrument: optionalColumn(textColumn({ label: 'Instrument', maxLength: 40, help: 'Its tag.' })),
    everyMin: optionalColumn(
      numberColumn({
        label: 'Read by itself every',
        unit: 'min',
        min: 0.1,
        max: 10_000,
        help: 'Where an instrument read on by itself since the row before: how often. The resistance is then the lowest since.',
      }),
    ),
    look: optionalColumn(
      choiceColumn({
        label: 'Seen afterwards, under magnification',
        options: INSULATION_LOOKS,
      }),
    ),
  },
  cautions: ['Patterns are under voltage in a damp chamber: switch off and discharge before reaching in.'],
})
