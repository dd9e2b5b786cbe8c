import { choiceColumn, numberColumn, textColumn } from '@/shared/columns/column'
import type { TestMethod } from './test-method'
import { moltenSolderCautions } from './solderability-conditions'

/** Resistance of the base material to soldering heat. It says nothing about solderability. */
export const solderFloat = {
  key: 'solder-float',
  label: 'Solder float',
  help: 'A dried specimen is floated on hot solder and looked at for damage: a test of the material’s resistance to heat, not of its solderability.',
  lotKinds: ['laminate', 'bare board', 'coupon'],
  ofSolderability: false,
  byInstrument: true,
  conditions: {
    bathTemperatureC: numberColumn({ label: 'Bath temperature', unit: '°C', min: 200, max: 320 }),
    floatS: numberColumn({ label: 'Time on the solder', unit: 's', min: 1, max: 120 }),
  },
  columns: {
    specimen: textColumn({ label: 'Specimen', maxLength: 40 }),
    outcome: choiceColumn({
      label: 'Outcome',
      options: [
        { value: 'sound', label: 'Sound' },
        { value: 'blistering', label: 'Blistering' },
        { value: 'delamination', label: 'Delamination' },
        { value: 'measling', label: 'Measling' },
        { value: 'lifted land', label: 'Lifted land' },
      ],
    }),
  },
  charted: 'outcome',
  cautions: [
    ...moltenSolderCautions,
    'Moisture in a laminate can throw solder out of the bath: bake specimens first.',
  ],
} as const satisfies TestMethod
