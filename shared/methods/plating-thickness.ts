import { optionsOf } from '@/shared/columns/choice-options'
import { choiceColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import type { TestMethod } from './test-method'

/** The deposits that are measured on boards and leads. */
export const DEPOSITS = {
  copper: { label: 'Copper' },
  nickel: { label: 'Nickel' },
  'tin-nickel': { label: 'Tin-nickel' },
  tin: { label: 'Tin' },
  'tin-lead': { label: 'Tin-lead' },
  'lead-free solder': { label: 'Lead-free solder' },
  gold: { label: 'Gold' },
  silver: { label: 'Silver' },
  palladium: { label: 'Palladium' },
  organic: { label: 'Organic preservative' },
} as const
export type Deposit = keyof typeof DEPOSITS

/** Where on a specimen a deposit is measured: each place has its own plating conditions. */
export const PLATING_PLACES = {
  track: { label: 'Track or land' },
  hole: { label: 'Plated hole' },
  lead: { label: 'Lead' },
} as const
export type PlatingPlace = keyof typeof PLATING_PLACES

/** Thickness of one deposit, place by place. */
export const platingThickness = {
  key: 'plating-thickness',
  label: 'Plating thickness',
  help: 'One test a deposit, one row a reading. Spread the readings over specimens and places: ten readings on one land say little about the lot.',
  lotKinds: ['bare board', 'coupon', 'component', 'laminate'],
  ofSolderability: false,
  byInstrument: true,
  conditions: {
    deposit: choiceColumn({ label: 'Deposit', options: optionsOf(DEPOSITS) }),
    technique: choiceColumn({
      label: 'Technique',
      options: [
        { value: 'x-ray', label: 'X-ray fluorescence' },
        { value: 'microsection', label: 'Microsection' },
        { value: 'resistance', label: 'Micro-resistance' },
        { value: 'eddy-current', label: 'Eddy current' },
        { value: 'coulometric', label: 'Coulometric' },
      ],
    }),
    uncertaintyUm: optionalColumn(
      numberColumn({
        label: 'Uncertainty of one reading',
        unit: 'µm',
        min: 0,
        max: 50,
        help: 'Expanded, as the calibration certificate states it.',
      }),
    ),
  },
  columns: {
    specimen: textColumn({ label: 'Specimen', maxLength: 40 }),
    place: choiceColumn({ label: 'Place', options: optionsOf(PLATING_PLACES) }),
    thicknessUm: numberColumn({ label: 'Thickness', unit: 'µm', min: 0, max: 500 }),
  },
  charted: 'thicknessUm',
  cautions: [
    'X-ray instruments are operated by trained people with the interlock in order; local radiation codes apply.',
    'Etchants, strippers and mounting resins burn and give off vapour: eye protection, gloves, extraction; local codes and the supplier’s safety sheets apply.',
  ],
} as const satisfies TestMethod
