import { numberColumn, optionalColumn, textColumn, type Column } from '@/shared/columns/column'
import { CONTAMINANTS } from '@/shared/materials/bath-contaminants'
import type { Characteristic } from '@/shared/records/characteristic'

const share = (label: string): Column =>
  optionalColumn(
    numberColumn({ label, unit: '%', min: 0, max: 100, help: 'Share by mass, from the analysis.' }),
  )

const METALS = Object.values(CONTAMINANTS).map(({ column }) => column)

/** Analyses of one solder bath. */
export const bathComposition = {
  key: 'bath-composition',
  label: 'solder bath composition',
  help: 'One row per analysis, shares by mass. A metal that was not analysed stays empty: empty is not zero.',
  level: false,
  comesWhole: false,
  columns: {
    tinPct: share('Tin'),
    ...Object.fromEntries(Object.values(CONTAMINANTS).map(({ column, label }) => [column, share(label)])),
    report: optionalColumn(textColumn({ label: 'Analysis report', maxLength: 80 })),
  },
  sharesOfWhole: ['tinPct', ...METALS],
  takenAt: 'wave',
  speaks: 'as a course',
  charted: 'copperPct',
} satisfies Characteristic
