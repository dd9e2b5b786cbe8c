import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { ALLOYS, type Alloy } from '@/shared/materials/alloys'
import { FLUXES } from '@/shared/materials/fluxes'
import { flux, solderAlloy } from '@/shared/plan/parameters/solder'
import { formatNumber } from '@/shared/quantity/format'
import { valueOf } from '../value-of'
import { numbers, texts, type ReferenceTable } from './reference-table'

/** Alloys for joints, and fluxes by their classification. */
export const solderTables = (view: ProgrammeView): ReferenceTable[] => [
  alloyTable(valueOf(view, solderAlloy)),
  fluxTable(valueOf(view, flux)),
]

const alloyTable = (chosen: string | undefined): ReferenceTable => ({
  caption: 'solder alloys',
  note: 'Melting ranges differ by a few kelvin between tables; solder creeps at any service temperature.',
  columns: [
    ...texts('Alloy', 'Family'),
    ...numbers('Solidus, °C', 'Liquidus, °C', 'Density, g/cm³', 'Lead, %', 'Bismuth, %'),
    ...texts('Remarks'),
  ],
  rows: Object.entries(ALLOYS).map(([key, alloy]: [string, Alloy]) => ({
    chosen: key === chosen,
    source: alloy.source,
    cells: [
      alloy.label,
      alloy.family,
      ...[alloy.solidusC, alloy.liquidusC, alloy.densityGcm3, alloy.leadPct, alloy.bismuthPct].map((value) =>
        formatNumber(value),
      ),
      alloy.note ?? '–',
    ],
  })),
})

const fluxTable = (chosen: string | undefined): ReferenceTable => ({
  caption: 'fluxes',
  note: 'Ask by which edition a flux was classified: an L0 of one edition may hold more halide than an L1 of the next.',
  columns: texts('Flux', 'Base', 'Activity', 'Halide', 'Residue may stay'),
  rows: Object.entries(FLUXES).map(([key, { label, base, activity, halide, residueMayStay, source }]) => ({
    chosen: key === chosen,
    source,
    cells: [label, base, activity, halide ? 'yes' : 'no', residueMayStay],
  })),
})
