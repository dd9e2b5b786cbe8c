import { dayOf, exportTable, instantOf, textOf, type ExportTable } from '@/lib/exports/tables/export-table'
import { readInstruments } from '@/lib/queries/instruments'
import { inForce, readTraining, type RecordedTraining } from '@/lib/queries/people-of-the-works'
import type { Instrument } from '@/shared/records/instrument'
import { skillName } from '@/shared/training/training-matrix'

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

/** The training that counts, of everybody, as it stands. */
export const trainingTable = async (): Promise<ExportTable> =>
  exportTable<RecordedTraining>(
    'training',
    [
      textOf('Worker', ({ worker }) => worker),
      textOf('Skill', ({ skill }) => skillName(skill)),
      dayOf('Passed on', ({ passedOn }) => passedOn),
      dayOf('Valid to', ({ expiresOn }) => expiresOn),
      textOf('Certificate or record', ({ certificate }) => certificate),
      textOf('Recorded in', ({ recordedIn }) => (recordedIn.kind === 'programme' ? recordedIn.code : '')),
      textOf('Recorded by', ({ recorded }) => recorded.by),
      instantOf('Recorded at', ({ recorded }) => recorded.at),
    ],
    inForce(await readTraining()),
  )
