import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { recordKind } from '@/shared/records/record-kind'
import { SKILLS } from './training'

/** Boards soldered on a day by a person: what was made, by whom, out of which lots. */
export const solderingRun = recordKind({
  key: 'soldering-run',
  label: 'soldering run',
  plural: 'Soldering runs',
  help: 'One row per day, worker and process: how many assemblies, which, and the lots that went into them.',
  stage: 'control',
  departments: ['production'],
  assemblies: { column: 'serials', one: false },
  teaches: false,
  columns: {
    doneOn: dateColumn({ label: 'Done on' }),
    worker: textColumn({ label: 'Worker', maxLength: 80 }),
    skill: choiceColumn({ label: 'Work', options: SKILLS }),
    begunAtH: optionalColumn(
      numberColumn({
        label: 'Begun at, hour of the day (UTC)',
        unit: 'h',
        min: 0,
        max: 24,
        help: 'Such as 6.5 for half past six. Left empty, the run is held against the readings of its day.',
      }),
    ),
    assemblies: numberColumn({ label: 'Assemblies', unit: 'boards', min: 0, max: 1_000_000, whole: true }),
    serials: optionalColumn(textColumn({ label: 'Serial numbers', maxLength: 200 })),
    lots: optionalColumn(
      textColumn({ label: 'Lots used', maxLength: 400, help: 'Codes of the lots, separated by commas.' }),
    ),
    line: optionalColumn(textColumn({ label: 'Line or bench', maxLength: 40 })),
  },
  cautions: [],
})
