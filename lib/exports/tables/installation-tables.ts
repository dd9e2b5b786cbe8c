import { dayOf, exportTable, textOf, type ExportTable } from '@/lib/exports/tables/export-table'
import { readInstruments } from '@/lib/queries/instruments'
import type { Instrument } from '@/shared/records/instrument'

/** The register of measuring instruments. */
export const instrumentsTable = async (): Promise<ExportTable> =>
  exportTable<Instrument>(
    'instruments',
    [
      textOf('Tag', ({ tag }) => tag),
      textOf('Measures', ({ measures }) => measures),
      dayOf('Calibrated', ({ calibratedOn }) => calibratedOn),
      dayOf('Due', ({ dueOn }) => dueOn),
      textOf('Certificate', ({ certificate }) => certificate),
      textOf('Out of use', ({ outOfUse }) => (outOfUse ? 'yes' : 'no')),
    ],
    await readInstruments(),
  )
