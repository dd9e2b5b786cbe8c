import { supplierAddress, worksLotAddress } from '@/app/addresses'
import { Day } from '@/app/ui/date'
import { RuledTable } from '@/app/ui/ruled-table'
import { Sign } from '@/app/ui/sign'
import type { StoreLot } from '@/lib/programme/works/store-of-lots'
import { groupedBy } from '@/shared/grouped-by'
import { dispositionInWords, isUsable, kindAndPart } from '@/shared/records/lot-identity'
import { byOrderOfUse, heldBy, isExpired, leftInStore } from '@/shared/storage/order-of-use'

interface StoreTableProps {
  caption: string
  lots: readonly StoreLot[]
  /** 'YYYY-MM-DD' */
  today: string
}

/** Lots part by part, each part in the order in which its lots are to be used. */
export function StoreTable({ caption, lots, today }: StoreTableProps) {
  const groups = [...groupedBy(lots, kindAndPart)].sort(([one], [other]) => (one < other ? -1 : 1))
  return (
    <RuledTable
      caption={caption}
      captionHidden
      narrow="cards-early"
      groups={groups.map(([key, own]) => ({
        key,
        heading: `${own[0]!.part} (${own[0]!.kind})`,
        rows: [...own].sort(byOrderOfUse),
      }))}
      rowKey={({ id }) => id}
      columns={[
        {
          label: 'Lot',
          set: 'shrink',
          names: true,
          cell: ({ supplier, code }) => <a href={worksLotAddress(supplier, code)}>{code}</a>,
        },
        {
          label: 'Supplier',
          cell: ({ supplier, dateCode }) => (
            <>
              <a href={supplierAddress(supplier)}>{supplier}</a>
              {dateCode && `, date code ${dateCode}`}
            </>
          ),
        },
        { label: 'Received', set: 'shrink', cell: ({ receivedOn }) => <Day at={receivedOn} /> },
        { label: 'To be used by', set: 'shrink', cell: (lot) => <LastDay lot={lot} today={today} /> },
        { label: 'Left', set: 'number', cell: leftInStore },
        { label: 'Of', set: 'number', cell: ({ quantity }) => quantity },
        { label: 'Held by', cell: heldInWords },
        { label: 'Disposition', set: 'shrink', cell: dispositionInWords },
      ]}
    />
  )
}

function LastDay({ lot, today }: { lot: StoreLot; today: string }) {
  if (lot.expiresOn === null) return <>not stated</>
  if (!isExpired(lot, today) || !isUsable(lot)) return <Day at={lot.expiresOn} />
  return (
    <span className="mark">
      <Sign kind="warning" size={16} />
      <strong>
        <Day at={lot.expiresOn} />, past
      </strong>
    </span>
  )
}

/** "LX-41: 240, PX-12: 20" */
function heldInWords({ allocations }: StoreLot): string {
  const held = [...groupedBy(allocations, ({ programme }) => programme)]
    .map(([programme, own]) => [programme, heldBy(own)] as const)
    .filter(([, pieces]) => pieces > 0)
  return held.map(([programme, pieces]) => `${programme}: ${pieces}`).join(', ') || 'nobody'
}
