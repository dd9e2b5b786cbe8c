import { numberColumn } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** Titrations of the flux in the tank: the control that low-solids flux needs. */
export const fluxAcidNumber = {
  key: 'flux-acid-number',
  label: 'flux acid number',
  help: 'One row per titration: titrant used, its strength, mass of the sample.',
  level: true,
  comesWhole: false,
  columns: {
    titrantMl: numberColumn({ label: 'Titrant used', unit: 'ml', min: 0, max: 100 }),
    titrantMolPerL: numberColumn({ label: 'Titrant strength, mol/l', unit: '1', min: 0.001, max: 2 }),
    sampleG: numberColumn({ label: 'Sample', unit: 'g', min: 0.01, max: 100 }),
  },
  takenAt: 'fluxer',
  speaks: 'until the next',
  charted: 'titrantMl',
} satisfies Characteristic
