import { choiceColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { LOT_KINDS } from '@/shared/methods/lot-kind'
import { tableParameter } from '@/shared/plan/parameter'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { optionsOf } from '@/shared/columns/choice-options'

/** What must be shown good before it is soldered: a row for each part and each test it has to pass. */
export const lotsNeeded = tableParameter({
  key: 'evaluation-lots-needed',
  label: 'Parts to be evaluated',
  help: 'Every part whose solderability the joints rest on: boards, each component type, laminate, consumables. One row for each test asked of it; the part is named as on its lots.',
  owner: 'quality',
  columns: {
    part: textColumn({ label: 'Part', maxLength: 80 }),
    kind: choiceColumn({
      label: 'Kind of lot',
      options: LOT_KINDS.map((kind) => ({ value: kind, label: kind })),
    }),
    method: choiceColumn({ label: 'Test', options: optionsOf(TEST_METHODS) }),
    note: optionalColumn(textColumn({ label: 'Note', maxLength: 200 })),
  },
})
