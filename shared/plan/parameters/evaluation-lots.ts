import { choiceColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { LOT_KINDS } from '@/shared/methods/lot-kind'
import { tableParameter } from '@/shared/plan/parameter'
import { INSPECTION_LEVEL_OPTIONS, QUALITY_LEVEL_OPTIONS } from './evaluation-sampling'
import { TEST_METHODS } from '@/shared/methods/test-methods'
import { optionsOf } from '@/shared/columns/choice-options'

/** What must be shown good before it is soldered: a row for each part and each test it has to pass. */
export const lotsNeeded = tableParameter({
  key: 'evaluation-lots-needed',
  label: 'Parts to be evaluated',
  help: 'Every part whose solderability the joints rest on: boards, each component type, laminate, consumables. One row for each test asked of it; the part is named as on its lots. Sample, level and quality level left empty are the programme’s own.',
  owner: 'quality',
  columns: {
    part: textColumn({ label: 'Part', maxLength: 80 }),
    kind: choiceColumn({
      label: 'Kind of lot',
      options: LOT_KINDS.map((kind) => ({ value: kind, label: kind })),
    }),
    method: choiceColumn({ label: 'Test', options: optionsOf(TEST_METHODS) }),
    lotSize: optionalColumn(
      numberColumn({
        label: 'Lot size expected',
        unit: 'pieces',
        min: 1,
        max: 1e7,
        whole: true,
        help: 'What the plan lets through is told by it before a lot is there.',
      }),
    ),
    sampleSize: optionalColumn(
      numberColumn({
        label: 'Sample',
        unit: 'pieces',
        min: 1,
        max: 1e5,
        whole: true,
        help: 'So many of every lot, none of which may be nonconforming, whatever the tables say.',
      }),
    ),
    level: optionalColumn(choiceColumn({ label: 'Level', options: INSPECTION_LEVEL_OPTIONS })),
    aql: optionalColumn(choiceColumn({ label: 'Quality level', options: QUALITY_LEVEL_OPTIONS })),
    note: optionalColumn(textColumn({ label: 'Note', maxLength: 200 })),
  },
})
