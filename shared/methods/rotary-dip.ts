import { choiceColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import type { TestMethod } from './test-method'
import {
  moltenSolderCautions,
  solderabilityConditions,
  wettingOutcomeColumn,
} from './solderability-conditions'

/** Time to wet a track or a plated hole swept through a solder surface. */
export const rotaryDip = {
  key: 'rotary-dip',
  label: 'Rotary dip',
  help: 'A specimen is swept across clean solder for longer and longer until it is wetted. One row per place looked at; the sample counts specimens, not places.',
  lotKinds: ['bare board', 'coupon', 'laminate'],
  ofSolderability: true,
  byInstrument: true,
  conditions: solderabilityConditions,
  columns: {
    specimen: textColumn({ label: 'Specimen', maxLength: 40 }),
    place: choiceColumn({
      label: 'Place',
      options: [
        { value: 'track', label: 'Track or land' },
        { value: 'hole', label: 'Plated hole' },
      ],
    }),
    outcome: wettingOutcomeColumn,
    wettingTimeS: optionalColumn(
      numberColumn({
        label: 'Wetting time',
        unit: 's',
        min: 0,
        max: 30,
        help: 'Left empty where the place never wetted.',
      }),
    ),
  },
  charted: 'wettingTimeS',
  cautions: moltenSolderCautions,
} as const satisfies TestMethod
