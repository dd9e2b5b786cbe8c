import { numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import type { TestMethod } from './test-method'
import { moltenSolderCautions, solderabilityConditions } from './solderability-conditions'

const share = (label: string, help?: string) => numberColumn({ label, unit: '%', min: 0, max: 100, help })

/** Dip, withdraw, and judge the share of the dipped area that holds a new coating. */
export const dipAndLook = {
  key: 'dip-and-look',
  label: 'Dip and look',
  help: 'One row per termination. The sample counts parts: the terminations of one part share one plating and are not independent trials.',
  lotKinds: ['component', 'bare board', 'coupon'],
  ofSolderability: true,
  byInstrument: true,
  conditions: {
    ...solderabilityConditions,
    dwellS: numberColumn({ label: 'Dwell in the solder', unit: 's', min: 0.5, max: 30 }),
    immersionSpeedMmPerS: optionalColumn(
      numberColumn({ label: 'Immersion speed', unit: 'mm/s', min: 1, max: 100 }),
    ),
    magnification: numberColumn({ label: 'Looked at with', unit: '×', min: 1, max: 40 }),
  },
  columns: {
    specimen: textColumn({ label: 'Part', maxLength: 40, help: 'The part dipped, not its termination.' }),
    termination: optionalColumn(textColumn({ label: 'Termination', maxLength: 20 })),
    coveragePct: share('Covered by new solder', 'Share of the dipped area.'),
    nonWettingPct: share('Non-wetting'),
    dewettingPct: share('Dewetting'),
    pinholesPct: optionalColumn(share('Pinholes and voids')),
  },
  charted: 'coveragePct',
  cautions: moltenSolderCautions,
} as const satisfies TestMethod
