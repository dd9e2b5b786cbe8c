import { AGEING_METHODS } from '@/shared/materials/ageing-methods'
import { optionsOf } from '@/shared/columns/choice-options'
import { choiceColumn, numberColumn, textColumn } from '@/shared/columns/column'
import { tableParameter } from '@/shared/plan/parameter'

/** Storage times that somebody says an ageing method stands for. */
export const ageingClaims = tableParameter({
  key: 'ageing-claims',
  label: 'Storage claimed for an ageing method',
  help: 'Only where a document claims so many months of storage for an ageing. Kept as a claim with its author: no published equivalence exists for steam.',
  owner: 'quality',
  columns: {
    method: choiceColumn({ label: 'Ageing', options: optionsOf(AGEING_METHODS) }),
    months: numberColumn({ label: 'Storage claimed', unit: 'months', min: 0.1, max: 600 }),
    claimedBy: textColumn({ label: 'Claimed by', maxLength: 80 }),
    document: textColumn({ label: 'Document', maxLength: 120 }),
  },
  maxRows: 20,
})
