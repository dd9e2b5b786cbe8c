import { actionAddress } from '@/app/addresses'
import type { Column } from '@/app/ui/ruled-table'
import type { ActionEntry } from '@/shared/gate/programme-state'

/** What every list of actions begins with: the number, and the question, which leads to it. */
export const actionColumns = (code: string): readonly Column<ActionEntry>[] => [
  { label: 'No.', set: 'shrink', cell: ({ number }) => number },
  {
    label: 'Question',
    names: true,
    cell: ({ number, question }) => <a href={actionAddress(code, number)}>{question}</a>,
  },
]
