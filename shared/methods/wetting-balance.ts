import { choiceColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import type { TestMethod } from './test-method'
import { moltenSolderCautions, solderabilityConditions } from './solderability-conditions'

/** The force on a specimen held in solder, over time. */
export const wettingBalance = {
  key: 'wetting-balance',
  label: 'Wetting balance',
  help: 'Import the force–time curve as the balance gives it: one row a sample, several specimens one after another. Evidence, not a verdict, unless the parties agreed criteria.',
  lotKinds: ['component', 'coupon', 'bare board'],
  ofSolderability: true,
  byInstrument: true,
  conditions: {
    ...solderabilityConditions,
    perimeterMm: numberColumn({
      label: 'Wettable perimeter',
      unit: 'mm',
      min: 0.05,
      max: 200,
      help: 'Only what solder can wet: bare laminate edges do not count.',
    }),
    sectionMm2: numberColumn({
      label: 'Full section',
      unit: 'mm²',
      min: 0.001,
      max: 500,
      help: 'Everything that displaces solder, wettable or not.',
    }),
    depthMm: numberColumn({ label: 'Immersion depth', unit: 'mm', min: 0.01, max: 20 }),
    immersionSpeedMmPerS: numberColumn({ label: 'Immersion speed', unit: 'mm/s', min: 0.1, max: 100 }),
    surfaceTensionNPerM: numberColumn({
      label: 'Surface tension',
      unit: 'N/m',
      min: 0.2,
      max: 0.8,
      help: '0.40 N/m is the convention for fluxed solder (IEC, from memory); 0.53 N/m was measured in air without flux.',
    }),
    densityGPerMl: numberColumn({
      label: 'Density of the solder',
      unit: 'g/ml',
      min: 5,
      max: 12,
      help: '8.0 g/ml is the convention for tin-lead (IEC, from memory).',
    }),
    forceSign: choiceColumn({
      label: 'Sign of the force',
      help: 'The two first editions of IEC 60068-2-54 drew the curve opposite ways.',
      options: [
        { value: 'down-positive', label: 'Positive when the solder pulls the specimen down (wetting)' },
        { value: 'up-positive', label: 'Positive when the solder pushes the specimen up (buoyancy)' },
      ],
    }),
    contactAtS: optionalColumn(
      numberColumn({
        label: 'Contact with the solder at',
        unit: 's',
        min: 0,
        max: 60,
        help: 'On the curve’s own clock; left empty when the clock starts at contact.',
      }),
    ),
  },
  columns: {
    specimen: textColumn({ label: 'Specimen', maxLength: 40 }),
    timeS: numberColumn({ label: 'Time', unit: 's', min: -10, max: 120 }),
    forceMN: numberColumn({ label: 'Force', unit: 'mN', min: -1000, max: 1000 }),
  },
  charted: 'forceMN',
  cautions: moltenSolderCautions,
} as const satisfies TestMethod
