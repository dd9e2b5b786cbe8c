import { RuledTable } from '@/app/ui/ruled-table'
import type { PairAgreement } from '@/shared/inspection/agreement-study'

/** How often the calls of two fell together, kind by kind; those alike stand in the diagonal. */
export function CrossTable({ pair: { one, other, kinds, kindTable } }: { pair: PairAgreement }) {
  return (
    <RuledTable
      caption={`Rows as ${one} called, columns as ${other} did`}
      narrow="scroll"
      rows={kinds}
      rowKey={(kind) => kind}
      columns={[
        { label: one, names: true, cell: (kind) => kind },
        ...kinds.map((column, at) => ({
          label: column,
          set: 'number' as const,
          cell: (kind: string) => {
            const count = kindTable[kinds.findIndex((row) => row === kind)]?.[at] ?? 0
            return kind === column ? <strong>{count}</strong> : count || '·'
          },
        })),
      ]}
    />
  )
}
