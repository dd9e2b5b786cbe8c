import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { ALLOYS, type Alloy } from '@/shared/materials/alloys'
import { BOARD_FINISHES } from '@/shared/materials/board-finishes'
import { FLUXES } from '@/shared/materials/fluxes'
import { LEAD_COATINGS } from '@/shared/materials/lead-finishes'
import { boardFinish, leadFinishes } from '@/shared/plan/parameters/finishes'
import { flux, solderAlloy } from '@/shared/plan/parameters/solder'
import { formatNumber } from '@/shared/quantity/format'
import { judgeSurface, type Surface } from '@/shared/rules/specification/mixed-metals'
import type { Source } from '@/shared/sources/source'
import { valueOf } from '../value-of'
import { numbers, texts, type ReferenceRow, type ReferenceTable } from './reference-table'

/** Alloys for joints, and fluxes by their classification. */
export const solderTables = (view: ProgrammeView): ReferenceTable[] => [
  alloyTable(valueOf(view, solderAlloy)),
  fluxTable(valueOf(view, flux)),
  meetingTable(view),
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

/** One alloy of each kind: what may meet it may meet its relatives. */
const MET = ['sn63pb37', 'sac305', 'sn42bi58'] as const

/** Which finish may meet which solder, judged as the rule on mixed metals judges. */
function meetingTable(view: ProgrammeView): ReferenceTable {
  const board = valueOf(view, boardFinish)
  const leads = new Set((valueOf(view, leadFinishes) ?? []).map(({ coating }) => coating as string))
  return {
    caption: 'which finish may meet which solder',
    note: 'As to lead and bismuth alone: gold, thickness and shelf life are judged with the finishes.',
    columns: texts('Finish', ...MET.map((alloy) => `With ${ALLOYS[alloy].label}`)),
    rows: [
      ...Object.entries(BOARD_FINISHES).map(([key, finish]) =>
        meetingRow({ subject: 'Board', finish: key, ...finish, bismuthPct: 0 }, key === board, finish.source),
      ),
      ...Object.entries(LEAD_COATINGS).map(([key, coating]) =>
        meetingRow({ subject: 'Lead', finish: key, ...coating }, leads.has(key), coating.source),
      ),
    ],
  }
}

const meetingRow = (surface: Surface, chosen: boolean, source: Source): ReferenceRow => ({
  chosen,
  source,
  cells: [
    `${surface.subject}: ${surface.label}`,
    ...MET.map((alloy) => {
      const { verdict, found } = judgeSurface(surface, alloy)
      return verdict === 'meets' ? 'may meet' : `not together: ${found}`
    }),
  ],
})
