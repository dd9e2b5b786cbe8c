import { DoneNotice } from '@/app/forms/done-notice'
import type { ReactNode } from 'react'
import { deskAddress, worksAddress, worksLiveAddress } from '@/app/addresses'
import { PersonCorner } from '@/app/frame/person-corner'
import { RenewWithNews } from '@/app/frame/renew-with-news'
import { PlaceNav } from '@/app/ui/place-nav'
import { Sheet } from '@/app/ui/sheet'
import { TitleBlock, type TitleCell } from '@/app/ui/title-block'
import type { SignedIn } from '@/lib/auth/session'
import { worksPlaces } from './works-places'

interface WorksSheetProps {
  person: SignedIn
  /** The address among the places of the works that this page belongs to. */
  at: string
  title: string
  supplement?: ReactNode
  cells?: readonly TitleCell[]
  /** Further places below the works, the page itself last. */
  place?: readonly { text: string; href?: string }[]
  /** How far the trails behind the page are: it then renews itself with their news. */
  newsSince?: string
  children: ReactNode
}

/** Machines push all day: the lines are drawn again so often at the most. */
const GATHERED_MS = 10_000

/** The frame of every page of the works. */
export function WorksSheet({
  person,
  at,
  title,
  supplement,
  cells = [],
  place = [],
  newsSince,
  children,
}: WorksSheetProps) {
  return (
    <Sheet
      place={[
        { text: 'Desk', href: deskAddress() },
        ...(place.length > 0 ? [{ text: 'Works', href: worksAddress() }, ...place] : [{ text: 'Works' }]),
      ]}
      nav={<PlaceNav label="Works" places={worksPlaces(person)} current={at} />}
      person={<PersonCorner person={person} />}
      titleBlock={<TitleBlock title={title} supplement={supplement} cells={cells} />}
      said={<DoneNotice />}
    >
      {newsSince !== undefined && (
        <RenewWithNews from={worksLiveAddress(newsSince)} gatheredMs={GATHERED_MS} />
      )}
      {children}
    </Sheet>
  )
}
