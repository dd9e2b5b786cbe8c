import { choiceColumn, optionalColumn, rangeColumn, type RangeColumn } from '@/shared/columns/column'
import { choiceParameter, tableParameter, type ValueOf } from '@/shared/plan/parameter'

const PROCESS_OPTIONS = [
  { value: 'hand', label: 'Hand soldering' },
  { value: 'dip', label: 'Dip soldering' },
  { value: 'wave', label: 'Wave soldering' },
  { value: 'selective', label: 'Selective soldering' },
  { value: 'reflow', label: 'Reflow, with paste in the holes' },
] as const

export const solderingProcess = choiceParameter({
  key: 'soldering-process',
  label: 'Soldering process',
  help: 'How the through-hole joints that a machine makes are soldered.',
  owner: 'production',
  options: PROCESS_OPTIONS,
})

/** A figure from nothing upwards, which may be a range; left empty it is not known. */
const figure = (options: Pick<RangeColumn, 'label' | 'unit' | 'max' | 'help'>) =>
  optionalColumn<RangeColumn>(rangeColumn({ ...options, min: 0 }))

/** What each process considered would cost: answered by production. */
export const processCosts = tableParameter({
  key: 'process-costs',
  label: 'Cost of the processes considered',
  help: 'One row for each process that could make the joints; the same currency throughout. A figure may be a range, “12 to 15”; one left empty is not known, and then nothing is called the least.',
  owner: 'production',
  maxRows: 10,
  columns: {
    process: choiceColumn({ label: 'Process', options: PROCESS_OPTIONS }),
    fixed: figure({
      label: 'Tooling and set-up',
      unit: 'currency',
      max: 1e9,
      help: 'Paid once, spread over the boards of the programme.',
    }),
    perBoard: figure({ label: 'Per board', unit: 'currency', max: 1e6 }),
    perJoint: figure({ label: 'Per joint', unit: 'currency', max: 1e4 }),
    defectsPerMillion: figure({ label: 'Defects expected', unit: 'per million', max: 1e6 }),
    perRework: figure({ label: 'Per rework', unit: 'currency', max: 1e5 }),
    foundPct: figure({ label: 'Found before delivery', unit: '%', max: 100 }),
    failingPct: figure({ label: 'Escapes that fail in service', unit: '%', max: 100 }),
    perFieldRepair: figure({ label: 'Per field repair', unit: 'currency', max: 1e7 }),
  },
})
export type ProcessCost = ValueOf<typeof processCosts>[number]
