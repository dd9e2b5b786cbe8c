import { choiceColumn } from '@/shared/columns/column'
import { tableParameter } from '@/shared/plan/parameter'
import { solderabilityConditions } from '@/shared/methods/solderability-conditions'
import { SOLDERABILITY_METHODS, TEST_METHODS } from '@/shared/methods/test-methods'

/** The conditions a solderability test has to be made under, method by method. */
export const testConditions = tableParameter({
  key: 'solderability-test-conditions',
  label: 'Conditions of the solderability tests',
  help: 'One row per method. Results under other conditions are kept but not compared: 235 °C for boards and 245 °C for leads are not interchangeable, nor is one flux with another.',
  owner: 'quality',
  columns: {
    method: choiceColumn({
      label: 'Test',
      options: SOLDERABILITY_METHODS.map((key) => ({ value: key, label: TEST_METHODS[key].label })),
    }),
    ...solderabilityConditions,
  },
  maxRows: 12,
})
