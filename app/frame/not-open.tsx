import type { ReactNode } from 'react'
import { deskAddress } from '@/app/addresses'
import { Nearby } from '@/app/frame/nearby'
import { ButtonLink } from '@/app/ui/button'
import { Notice } from '@/app/ui/notice'
import { Sheet } from '@/app/ui/sheet'
import { TitleBlock } from '@/app/ui/title-block'
import { faceOf, type CommandName } from '@/shared/commands/all-faces'
import { whoMay } from '@/shared/policy'

/** In place of a page that is not for the person who asks: why, and who could mend it. */
export const NotOpen = ({ children }: { children: ReactNode }) => (
  <Sheet
    place={[{ text: 'Not open to you' }]}
    nav={<Nearby />}
    titleBlock={<TitleBlock title="This sheet is not open to you" cells={[]} />}
  >
    <Notice kind="refusal">{children}</Notice>
    <ButtonLink href={deskAddress()}>Go to your desk</ButtonLink>
  </Sheet>
)

/** In place of a page whose form gives a command that is for others. */
export const NotOpenUnless = ({ command }: { command: CommandName }) => (
  <NotOpen>Only {whoMay(faceOf(command).may)} may do this.</NotOpen>
)
