import { Day } from '@/app/ui/date'
import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import type { StatedRequirement } from '@/lib/queries/requirements'
import type { Limit } from '@/shared/plan/requirement'
import { WithdrawForm } from './requirement-forms'

interface StatedProps {
  programme: string
  limit: Limit
  stated: readonly StatedRequirement[]
  mayWithdraw: boolean
}

/** Every requirement ever stated on the limit: by whom, why, and whether it stands. */
export function Stated({ programme, limit, stated, mayWithdraw }: StatedProps) {
  return (
    <RuledTable
      caption="Requirements stated on the limit"
      captionHidden
      narrow="cards-early"
      rows={stated}
      rowKey={({ id }) => id}
      columns={[
        {
          label: 'Document',
          names: true,
          cell: ({ document, clause, authority }) =>
            `${document}${clause ? `, ${clause}` : ''} (${authority})`,
        },
        {
          label: 'Value',
          set: 'number',
          cell: ({ value, relaxes }) => (
            <>
              <Quantity value={value} unit={limit.unit} />
              {relaxes && ', relaxes'}
            </>
          ),
        },
        {
          label: 'Stated',
          cell: ({ author, at, reason }) => (
            <>
              {author}, <Day at={at} />: {reason}
            </>
          ),
        },
        {
          label: 'Stands',
          cell: ({ id, document, withdrawn }) =>
            withdrawn ? (
              <>
                withdrawn by {withdrawn.by}, <Day at={withdrawn.at} />
              </>
            ) : mayWithdraw ? (
              <WithdrawForm programme={programme} requirement={id} document={document} />
            ) : (
              'stands'
            ),
        },
      ]}
    />
  )
}
