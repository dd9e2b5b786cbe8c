import { numberColumn } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** Density of the flux in the tank with the temperature at which it was read. */
export const fluxDensity = {
  key: 'flux-density',
  label: 'flux density',
  help: 'Density as read and the temperature of the flux at that moment; the correction to the reference temperature is made here.',
  level: true,
  comesWhole: false,
  columns: {
    densityGPerMl: numberColumn({ label: 'Density as read', unit: 'g/ml', min: 0.5, max: 2 }),
    temperatureC: numberColumn({ label: 'Flux temperature', unit: '°C', min: -10, max: 60 }),
  },
  takenAt: 'fluxer',
  speaks: 'of the day of a run',
  charted: 'densityGPerMl',
} satisfies Characteristic
