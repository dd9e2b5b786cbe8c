import { numberColumn, optionalColumn } from '@/shared/columns/column'
import type { Characteristic } from '@/shared/records/characteristic'

/** What decides the dwell: contact length and conveyor speed. */
export const waveContact = {
  key: 'wave-contact',
  label: 'wave contact and speed',
  help: 'Contact length of the main wave as measured (for instance on a glass plate), of the first wave where there is one, and the conveyor speed.',
  level: true,
  comesWhole: false,
  columns: {
    contactLengthMm: numberColumn({ label: 'Contact length, main wave', unit: 'mm', min: 0.1, max: 300 }),
    firstWaveLengthMm: optionalColumn(
      numberColumn({ label: 'Contact length, first wave', unit: 'mm', min: 0, max: 300 }),
    ),
    conveyorSpeedMPerMin: numberColumn({ label: 'Conveyor speed', unit: 'm/min', min: 0.05, max: 10 }),
  },
  takenAt: 'wave',
  speaks: 'of the day of a run',
  charted: 'contactLengthMm',
} satisfies Characteristic
