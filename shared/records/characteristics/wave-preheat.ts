import { numberColumn, optionalColumn } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** What the board has been through when it meets the wave. */
export const wavePreheat = {
  key: 'wave-preheat',
  label: 'preheat',
  help: 'Temperature of the upper side as the board enters the wave, and the steepest rise on the way there.',
  level: true,
  comesWhole: false,
  columns: {
    uppersideC: numberColumn({ label: 'Upper side entering the wave', unit: '°C', min: 0, max: 300 }),
    steepestRiseKPerS: optionalColumn(numberColumn({ label: 'Steepest rise', unit: 'K/s', min: 0, max: 50 })),
    bathC: optionalColumn(
      numberColumn({
        label: 'Bath temperature at the time',
        unit: '°C',
        min: 0,
        max: 600,
        help: 'For the step into the wave; the specified bath temperature is used when it is empty.',
      }),
    ),
  },
  takenAt: 'preheater',
  speaks: 'of the day of a run',
  charted: 'uppersideC',
} satisfies Characteristic
