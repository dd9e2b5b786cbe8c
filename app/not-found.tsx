import { deskAddress } from '@/app/addresses'
import { Nearby } from '@/app/frame/nearby'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { Sheet } from '@/app/ui/sheet'
import { TitleBlock } from '@/app/ui/title-block'

/** An address that leads nowhere. */
export default function NotFound() {
  return (
    <Sheet
      place={[{ text: 'Not found' }]}
      nav={<Nearby />}
      titleBlock={<TitleBlock title="Page not found" cells={[]} />}
    >
      <Notice kind="info" title="Nothing is kept under this address">
        It may have been mistyped, or what it named was never recorded. Nothing is ever deleted here.
      </Notice>
      <ButtonLink href={deskAddress()}>Go to your desk</ButtonLink>
    </Sheet>
  )
}
