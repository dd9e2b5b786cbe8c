import { choiceColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** Electrical checks of soldering irons: resistance of the tip to ground and leakage. */
export const tipGround = {
  key: 'tip-ground',
  label: 'soldering iron ground and leakage',
  help: 'One row per check: resistance from tip to ground, and the voltage that leaks to the tip. By a person competent to test mains-powered equipment.',
  level: false,
  comesWhole: false,
  columns: {
    iron: textColumn({ label: 'Iron', maxLength: 40 }),
    resistanceOhm: numberColumn({ label: 'Tip to ground', unit: 'Ω', min: 0, max: 1_000_000 }),
    leakageMv: optionalColumn(numberColumn({ label: 'Leakage', unit: 'mV', min: 0, max: 300_000 })),
    tip: choiceColumn({
      label: 'Tip',
      options: [
        { value: 'hot', label: 'Measured hot' },
        { value: 'cold', label: 'Measured cold' },
      ],
    }),
  },
  takenAt: 'bench',
  speaks: 'until the next',
  charted: 'resistanceOhm',
} satisfies Characteristic
