import { worksLotAddress } from '@/app/addresses'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { formatQuantity } from '@/shared/quantity/format'
import type { Lot } from '@/shared/records/lot'

/** That the lot is the works', and the way to where it is tested, disposed of and allocated. */
export const AtTheWorks = ({ lot, at }: { lot: Lot; at: NonNullable<Lot['atWorks']> }) => (
  <Notice kind="info" title="A lot of the works">
    <p>
      This programme holds {formatQuantity(at.allocated, 'pieces', 9)} of {lot.quantity}. Its tests and its
      disposition count for every programme that holds some.
    </p>
    <ButtonLink href={worksLotAddress(at.supplier, at.lot)}>Test, correct or dispose of it</ButtonLink>
  </Notice>
)
