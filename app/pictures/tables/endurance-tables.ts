import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { FIRST_COMPOUND_UM, GAS_CONSTANT, GROWTH_LAWS } from '@/shared/materials/growth-laws'
import { growthConstant } from '@/shared/physics/intermetallic'
import { environment } from '@/shared/plan/parameters/programme'
import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import {
  CONNECTION_BASE_RATES,
  ENVIRONMENT_FACTORS,
  ENVIRONMENT_SOURCE,
  PLATED_HOLE_BASE_RATES,
} from '@/shared/reliability/models/connection-rates'
import { ENGELMAIER } from '@/shared/reliability/models/engelmaier'
import { modelLabel } from '@/shared/reliability/models/model'
import { NORRIS_LANDZBERG } from '@/shared/reliability/models/norris-landzberg'
import { valueOf } from '../value-of'
import { numbers, texts, type ReferenceTable } from './reference-table'

const TOLD_C = [25, 40]

/** Laws of compound growth, and what a coating starts with. */
export const storageTables = (): ReferenceTable[] => [
  {
    caption: 'growth of compound between tin and copper',
    note: 'A store is judged by the fastest whose author can be followed; the fit in circulation is shown beside them.',
    columns: [
      ...texts('Law'),
      ...numbers('Energy, kJ/mol', ...TOLD_C.map((each) => `Compound after a year at ${each} °C, µm`)),
    ],
    rows: Object.values(GROWTH_LAWS).map((law) => ({
      cells: [
        law.label,
        formatNumber((law.perKelvin * GAS_CONSTANT) / 1e3, 3),
        ...TOLD_C.map((each) => formatNumber(Math.sqrt(growthConstant(law, each) * 8760), 3)),
      ],
      source: law.source,
    })),
  },
  {
    caption: 'compound that a coating starts with',
    columns: [...texts('Coating'), ...numbers('Compound, µm')],
    rows: Object.entries(FIRST_COMPOUND_UM).map(([key, { value, source }]) => ({
      cells: [key, formatNumber(value)],
      source,
    })),
  },
]

/** Failure rates and environments of the handbook, and the constants of the fatigue models. */
export const enduranceTables = (view: ProgrammeView): ReferenceTable[] => {
  const chosen = valueOf(view, environment)
  return [
    {
      caption: 'environment factors',
      note: 'They multiply the rate of every joint in the series model.',
      columns: [...texts('Environment'), ...numbers('Plated holes', 'Other joints')],
      rows: ENVIRONMENT_FACTORS.map(({ letters, name, connection, platedHole }) => ({
        chosen: letters === chosen,
        cells: [`${letters}: ${name}`, formatNumber(platedHole), formatNumber(connection)],
        source: ENVIRONMENT_SOURCE,
      })),
    },
    {
      caption: 'base failure rates, FIT',
      note: 'The two issues differ by more than two to one; there is no row for a wave-soldered joint outside a plated hole.',
      columns: [...texts('Joint'), ...numbers('Notice 2, 1995', 'Base issue, 1991')],
      rows: [
        ...PLATED_HOLE_BASE_RATES.map((row) => ({ ...row, name: `plated hole, ${row.board}` })),
        ...CONNECTION_BASE_RATES.map((row) => ({ ...row, name: row.kind })),
      ].map((row) => ({
        cells: [row.name, fit(row['Notice 2, 1995']), fit(row['base issue, 1991'])],
        source: row.source,
      })),
    },
    {
      caption: 'fatigue models',
      note: 'Made for surface-mounted joints: for a pin in a plated hole each is an extrapolation.',
      columns: texts('Model', 'Constants', 'Caution'),
      rows: [
        ...NORRIS_LANDZBERG.map((model) => ({
          cells: [
            modelLabel(model),
            `swing ${formatNumber(model.swingExponent)}, slowness ${formatNumber(model.slownessExponent, 3)}, ${formatQuantity(model.temperatureK, 'K')}`,
            model.caution,
          ],
          source: model.source,
        })),
        {
          cells: [modelLabel(ENGELMAIER), 'fatigue ductility 0.325', ENGELMAIER.caution],
          source: ENGELMAIER.source,
        },
      ],
    },
  ]
}

/** Printed per 10⁹ hours from a rate per 10⁶ hours. */
const fit = (perMillionHours: number): string => formatNumber(perMillionHours * 1e3, 3)
