import { numberColumn, optionalColumn, type Column } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** Columns of the thermocouples of a profile, in their order on the board. */
export const THERMOCOUPLES = [
  'couple1C',
  'couple2C',
  'couple3C',
  'couple4C',
  'couple5C',
  'couple6C',
  'couple7C',
  'couple8C',
] as const

const couple = (number: number): Column =>
  optionalColumn(
    numberColumn({
      label: `Thermocouple ${number}`,
      unit: '°C',
      min: -40,
      max: 500,
      alsoCalled: [`TC ${number}`, `TC${number}`, `couple ${number}`, `channel ${number}`, `CH${number}`],
    }),
  )

/** One pass of a measured board: a log of its own, thermocouples side by side. */
export const thermalProfile = {
  key: 'thermal-profile',
  label: 'thermal profile',
  help: 'One log a pass of the measured board: time and up to eight thermocouples side by side.',
  level: false,
  comesWhole: true,
  columns: Object.fromEntries(THERMOCOUPLES.map((key, index) => [key, couple(index + 1)])),
  takenAt: 'wave',
  speaks: 'always',
  ofOneProgramme: true,
  charted: 'couple1C',
} satisfies Characteristic
