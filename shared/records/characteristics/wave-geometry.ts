import { numberColumn } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** How deep the board dips into the wave, and how steeply the conveyor climbs. */
export const waveGeometry = {
  key: 'wave-geometry',
  label: 'wave immersion and conveyor angle',
  help: 'Depth to which the board dips into the wave and the climb of the conveyor.',
  level: true,
  comesWhole: false,
  columns: {
    immersionMm: numberColumn({ label: 'Immersion', unit: 'mm', min: 0, max: 20 }),
    angleDeg: numberColumn({ label: 'Conveyor angle', unit: '°', min: 0, max: 45 }),
  },
  takenAt: 'wave',
  speaks: 'of the day of a run',
  charted: 'immersionMm',
} satisfies Characteristic
