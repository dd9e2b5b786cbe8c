import { numberColumn } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** Temperature of the molten solder, measured in the bath and not read off the controller. */
export const bathTemperature = {
  key: 'bath-temperature',
  label: 'solder bath temperature',
  help: 'Measured in the solder where the boards pass, not read off the controller.',
  level: true,
  comesWhole: false,
  columns: { bathC: numberColumn({ label: 'Bath temperature', unit: '°C', min: 0, max: 600 }) },
  takenAt: 'wave',
  speaks: 'of the day of a run',
  charted: 'bathC',
} satisfies Characteristic
