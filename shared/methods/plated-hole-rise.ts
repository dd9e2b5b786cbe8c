import { numberColumn, textColumn } from '@/shared/columns/column'
import type { TestMethod } from './test-method'
import {
  moltenSolderCautions,
  solderabilityConditions,
  wettingOutcomeColumn,
} from './solderability-conditions'

/** How far solder rises in plated holes of a floated specimen. */
export const platedHoleRise = {
  key: 'plated-hole-rise',
  label: 'Rise in plated holes',
  help: 'The fluxed specimen is floated on solder and every hole is looked at from above. One row per hole; the sample counts specimens.',
  lotKinds: ['bare board', 'coupon'],
  ofSolderability: true,
  byInstrument: true,
  conditions: {
    ...solderabilityConditions,
    floatS: numberColumn({ label: 'Time on the solder', unit: 's', min: 0.5, max: 30 }),
  },
  columns: {
    specimen: textColumn({ label: 'Specimen', maxLength: 40 }),
    hole: textColumn({ label: 'Hole', maxLength: 20 }),
    outcome: wettingOutcomeColumn,
    risePct: numberColumn({
      label: 'Rise',
      unit: '%',
      min: 0,
      max: 100,
      help: 'Share of the board’s thickness; 100 where the knee on the upper side is wetted.',
    }),
  },
  charted: 'risePct',
  cautions: moltenSolderCautions,
} as const satisfies TestMethod
