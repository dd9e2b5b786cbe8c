import { SPACING_CATEGORIES, SPACING_TABLES } from '@/shared/materials/conductor-spacings'
import { optionsOf } from '@/shared/columns/choice-options'
import {
  choiceColumn,
  flagColumn,
  numberColumn,
  optionalColumn,
  textColumn,
  type NumberColumn,
} from '@/shared/columns/column'
import { choiceParameter, numberParameter, tableParameter, type ValueOf } from '@/shared/plan/parameter'

const categories = Object.entries(SPACING_CATEGORIES).map(([value, message]) => ({
  value: value as keyof typeof SPACING_CATEGORIES,
  label: `${value}: ${message}`,
}))

/** The widest gap that is a matter of layout, mm. */
export const WIDEST_GAP_MM = 100

export const spacings = tableParameter({
  key: 'spacings',
  label: 'Closest spacings',
  help: 'The closest pair of conductors of each voltage and kind.',
  owner: 'design',
  columns: {
    between: textColumn({ label: 'Between', maxLength: 80 }),
    peakV: numberColumn({
      label: 'Voltage between them',
      unit: 'V',
      min: 0,
      max: 10_000,
      help: 'Direct voltage or peak, not effective.',
    }),
    category: choiceColumn({ label: 'Kind of spacing', options: categories }),
    gapMm: numberColumn({ label: 'Gap', unit: 'mm', min: 0.01, max: WIDEST_GAP_MM }),
    mains: flagColumn({ label: 'Mains on one of them' }),
    solderSide: choiceColumn({
      label: 'At the solder',
      options: [
        { value: 'bare', label: 'Meets the solder bare' },
        { value: 'masked', label: 'Under solder mask' },
        { value: 'away', label: 'Does not meet the solder' },
      ],
    }),
    parallelMm: optionalColumn<NumberColumn>(
      numberColumn({ label: 'Runs side by side for', unit: 'mm', min: 0, max: 1000 }),
    ),
    travelAngleDeg: optionalColumn<NumberColumn>(
      numberColumn({
        label: 'Angle to travel',
        unit: '°',
        min: 0,
        max: 90,
        help: '0° lies along the travel of the board over the wave, 90° across it.',
      }),
    ),
  },
})
export type SpacingRow = ValueOf<typeof spacings>[number]

export const spacingEdition = choiceParameter({
  key: 'spacing-edition',
  label: 'Spacings by',
  help: 'The two tables differ, most at low voltage. Left open, the larger spacing of both applies.',
  owner: 'design',
  options: optionsOf(SPACING_TABLES),
})

export const copperToEdge = numberParameter({
  key: 'copper-to-edge',
  label: 'Copper to board edge',
  help: 'The least distance of any copper from the edge of the finished board.',
  owner: 'design',
  unit: 'mm',
  min: 0,
  max: 50,
})

export const partsToEdge = numberParameter({
  key: 'parts-to-edge',
  label: 'Components to carried edge',
  help: 'The least distance of components and joints from the edges that the conveyor holds.',
  owner: 'design',
  unit: 'mm',
  min: 0,
  max: 100,
})
