import { deskAddress } from '@/app/addresses'
import { Nearby } from '@/app/frame/nearby'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { Sheet } from '@/app/ui/sheet'
import { TitleBlock } from '@/app/ui/title-block'

/** In place of a preview, when no file of that name is there for the person in this programme. */
export const NoSuchFile = ({ sendFrom }: { sendFrom: string }) => (
  <Sheet
    place={[{ text: 'Import' }]}
    nav={<Nearby />}
    titleBlock={<TitleBlock title="There is no such file" cells={[]} />}
  >
    <Notice kind="info" title="Nothing to import">
      A file waits for its import for a week, for the person who sent it. Send it again from the page of the{' '}
      {sendFrom}.
    </Notice>
    <ButtonLink href={deskAddress()}>Go to your desk</ButtonLink>
  </Sheet>
)
