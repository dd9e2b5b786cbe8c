import { choiceColumn, dateColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { DEFECT_KINDS } from '@/shared/records/inspection'
import { recordKind } from '@/shared/records/record-kind'

const CALLS = [
  { value: 'sound', label: 'sound' },
  ...DEFECT_KINDS.map((kind) => ({ value: kind, label: kind })),
] as const

/** What one inspector called one joint of a blind set. */
export const inspectorCall = recordKind({
  key: 'inspector-call',
  label: 'inspector’s call',
  plural: 'Inspector agreement study',
  help: 'One row per inspector, joint and round, called without sight of other calls. The reference call is what the joint is known to be.',
  stage: 'assessment',
  departments: ['quality'],
  assemblies: null,
  teaches: false,
  columns: {
    calledOn: dateColumn({ label: 'Called on' }),
    study: textColumn({ label: 'Study', maxLength: 40 }),
    inspector: textColumn({ label: 'Inspector', maxLength: 80 }),
    joint: textColumn({ label: 'Joint of the set', maxLength: 40 }),
    round: numberColumn({ label: 'Round', unit: '1', min: 1, max: 20, whole: true }),
    call: choiceColumn({ label: 'Call', options: CALLS }),
    reference: optionalColumn(choiceColumn({ label: 'Reference', options: CALLS })),
  },
  cautions: [],
})
