import { choiceColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { LOT_KINDS } from '@/shared/methods/lot-kind'
import { tableParameter } from '@/shared/plan/parameter'
import { solderabilityConditions } from '@/shared/methods/solderability-conditions'
import { SOLDERABILITY_METHODS, TEST_METHODS } from '@/shared/methods/test-methods'

/** The conditions a solderability test has to be made under, method by method. */
export const testConditions = tableParameter({
  key: 'solderability-test-conditions',
  label: 'Conditions of the solderability tests',
  help: 'One row for each condition asked. Two rows for one method are two demands: every lot is tried under each, as received and after steam, say. Results under other conditions are kept but not compared: 235 °C for boards and 245 °C for leads are not interchangeable, nor is one flux with another.',
  owner: 'quality',
  columns: {
    method: choiceColumn({
      label: 'Test',
      options: SOLDERABILITY_METHODS.map((key) => ({ value: key, label: TEST_METHODS[key].label })),
    }),
    ...solderabilityConditions,
    kind: optionalColumn(
      choiceColumn({
        label: 'Only for',
        options: LOT_KINDS.map((kind) => ({ value: kind, label: kind })),
        help: 'A kind of lot that these conditions are for; left empty, all that have no row of their own.',
      }),
    ),
    part: optionalColumn(
      textColumn({
        label: 'Only for the part',
        maxLength: 80,
        help: 'Named as on its lots; its rows take the place of those for its kind.',
      }),
    ),
  },
  maxRows: 60,
})
