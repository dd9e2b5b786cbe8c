import { numberColumn } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** Temperature and humidity where boards and components wait for soldering. */
export const storeClimate = {
  key: 'store-climate',
  label: 'store climate',
  help: 'Temperature and relative humidity where boards and components wait.',
  level: false,
  comesWhole: false,
  columns: {
    temperatureC: numberColumn({ label: 'Temperature', unit: '°C', min: -40, max: 80 }),
    relativeHumidityPct: numberColumn({ label: 'Relative humidity', unit: '% RH', min: 0, max: 100 }),
  },
  takenAt: 'store',
  speaks: 'always',
  charted: 'relativeHumidityPct',
} satisfies Characteristic
