import { storeAddress, suppliersAddress } from '@/app/addresses'
import { ButtonLink } from '@/app/ui/button'
import { Empty } from '@/app/ui/empty'
import { readStore } from '@/lib/queries/works/store'
import { dateAtWorks } from '@/lib/settings/works'
import { isUsable } from '@/shared/records/lot-identity'
import { isExpired } from '@/shared/storage/order-of-use'
import { StoreTable } from '../store-table'
import { visitWorks } from '../visit-works'
import { WorksSheet } from '../works-sheet'

export const metadata = { title: 'Store – Liquidus' }

/** Every lot with something left: what expires first is used first, and who holds the rest. */
export default async function StorePage() {
  const { person } = await visitWorks(storeAddress())
  const lots = await readStore()
  const today = dateAtWorks(new Date())
  return (
    <WorksSheet
      person={person}
      at={storeAddress()}
      place={[{ text: 'Store' }]}
      title="Store"
      supplement="Lots with pieces left, part by part: what expires first, then what came first, is used first"
      cells={[
        { label: 'Lots', value: lots.length },
        { label: 'Awaiting disposition', value: lots.filter(({ disposition }) => !disposition).length },
        {
          label: 'Past their day',
          value: lots.filter((lot) => isUsable(lot) && isExpired(lot, today)).length,
        },
      ]}
    >
      <p className="form-actions">
        <ButtonLink href={suppliersAddress()}>Receive a lot at its supplier</ButtonLink>
      </p>
      {lots.length > 0 ? (
        <StoreTable caption="Lots in store" lots={lots} today={today} />
      ) : (
        <Empty title="Nothing in store">
          A lot is received on its supplier’s page; whatever programmes do not hold is shown here.
        </Empty>
      )}
    </WorksSheet>
  )
}
