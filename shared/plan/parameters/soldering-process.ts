import { choiceColumn, numberColumn } from '@/shared/columns/column'
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

/** What each process considered would cost: answered by production. */
export const processCosts = tableParameter({
  key: 'process-costs',
  label: 'Cost of the processes considered',
  help: 'One row for each process that could make the joints; the same currency throughout.',
  owner: 'production',
  maxRows: 10,
  columns: {
    process: choiceColumn({ label: 'Process', options: PROCESS_OPTIONS }),
    fixed: numberColumn({
      label: 'Tooling and set-up',
      unit: 'currency',
      min: 0,
      max: 1e9,
      help: 'Paid once, spread over the boards of the programme.',
    }),
    perBoard: numberColumn({ label: 'Per board', unit: 'currency', min: 0, max: 1e6 }),
    perJoint: numberColumn({ label: 'Per joint', unit: 'currency', min: 0, max: 1e4 }),
    defectsPerMillion: numberColumn({
      label: 'Defects expected',
      unit: 'per million',
      min: 0,
      max: 1e6,
    }),
    perRework: numberColumn({ label: 'Per rework', unit: 'currency', min: 0, max: 1e5 }),
    foundPct: numberColumn({ label: 'Found before delivery', unit: '%', min: 0, max: 100 }),
    failingPct: numberColumn({
      label: 'Escapes that fail in service',
      unit: '%',
      min: 0,
      max: 100,
    }),
    perFieldRepair: numberColumn({ label: 'Per field repair', unit: 'currency', min: 0, max: 1e7 }),
  },
})
export type ProcessCost = ValueOf<typeof processCosts>[number]
