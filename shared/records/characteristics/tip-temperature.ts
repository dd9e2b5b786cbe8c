import { choiceColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** Idle temperature of soldering iron tips against what the iron is set to. */
export const tipTemperature = {
  key: 'tip-temperature',
  label: 'soldering iron tip temperature',
  help: 'One row per check: which iron, what it is set to, what the tip measures at rest.',
  level: false,
  comesWhole: false,
  columns: {
    iron: textColumn({ label: 'Iron', maxLength: 40 }),
    bit: textColumn({ label: 'Bit', maxLength: 40 }),
    setC: numberColumn({ label: 'Set', unit: '°C', min: 100, max: 500 }),
    measuredC: numberColumn({ label: 'Measured at rest', unit: '°C', min: 0, max: 600 }),
    state: optionalColumn(
      choiceColumn({
        label: 'Iron from then on',
        options: [
          { value: 'in-use', label: 'In use' },
          { value: 'withdrawn', label: 'Taken out of use' },
        ],
      }),
    ),
  },
  takenAt: 'bench',
  speaks: 'until the next',
  charted: 'measuredC',
} satisfies Characteristic
