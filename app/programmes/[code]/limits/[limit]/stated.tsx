import { companyRulesAddress } from '@/app/addresses'
import { BroughtBy } from '@/app/findings/brought-by'
import { Day } from '@/app/ui/date'
import { Quantity } from '@/app/ui/quantity'
import { RuledTable } from '@/app/ui/ruled-table'
import type { StatedRequirement } from '@/lib/queries/requirements'
import type { OptionStudy } from '@/shared/gate/option-study'
import type { Limit } from '@/shared/plan/requirement'
import { studyBringing } from '@/shared/why/brought-by'
import { WithdrawForm } from './requirement-forms'

interface StatedProps {
  programme: string
  limit: Limit
  stated: readonly StatedRequirement[]
  /** The studies that touch the limit's item: by one of them a requirement may have come. */
  studies: readonly OptionStudy[]
  mayWithdraw: boolean
}

/** Every requirement ever stated on the limit: by whom, why, and whether it stands. */
export function Stated({ programme, limit, stated, studies, mayWithdraw }: StatedProps) {
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
          cell: ({ author, at, reason, notice, companyRule }) => (
            <>
              {author}, <Day at={at} />
              <BroughtBy
                code={programme}
                notice={notice}
                study={studyBringing(studies, at, { limit: limit.key })?.number}
              />
              {companyRule !== null && (
                <>
                  , from the <a href={companyRulesAddress()}>company rules</a>
                </>
              )}
              : {reason}
            </>
          ),
        },
        {
          label: 'Stands',
          cell: ({ id, document, withdrawn }) =>
            withdrawn ? (
              <>
                withdrawn by {withdrawn.by}, <Day at={withdrawn.at} />
                <BroughtBy code={programme} notice={withdrawn.notice} />
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
