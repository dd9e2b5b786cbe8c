import { choiceColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import type { TestMethod } from './test-method'

/** A delivery compared with its order and its certificate, before anything is tested. */
export const receivingCheck = {
  key: 'receiving-check',
  label: 'Receiving check',
  help: 'The delivery against the order and the supplier’s certificate: one row a thing compared.',
  lotKinds: ['laminate', 'bare board', 'coupon', 'component', 'consumable'],
  ofSolderability: false,
  byInstrument: false,
  conditions: {
    certificate: optionalColumn(textColumn({ label: 'Certificate', maxLength: 80 })),
  },
  columns: {
    specimen: textColumn({ label: 'Piece or pack', maxLength: 40 }),
    checked: choiceColumn({
      label: 'Compared',
      options: [
        { value: 'identity', label: 'Part and revision' },
        { value: 'date code', label: 'Date code' },
        { value: 'finish', label: 'Finish stated' },
        { value: 'dimensions', label: 'Dimensions' },
        { value: 'packing', label: 'Packing and its seal' },
        { value: 'shelf life', label: 'Shelf life' },
      ],
    }),
    outcome: choiceColumn({
      label: 'Outcome',
      options: [
        { value: 'as ordered', label: 'As ordered' },
        { value: 'not as ordered', label: 'Not as ordered' },
      ],
    }),
  },
  charted: 'outcome',
  cautions: [],
} as const satisfies TestMethod
