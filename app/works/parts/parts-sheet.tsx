import type { ReactNode } from 'react'
import { partsAddress, worksAddress } from '@/app/addresses'
import { DeskSheet } from '@/app/frame/desk-sheet'
import type { TitleCell } from '@/app/ui/title-block'
import type { SignedIn } from '@/lib/auth/session'

interface PartsSheetProps {
  person: SignedIn
  title: string
  supplement?: ReactNode
  cells?: readonly TitleCell[]
  /** Further places below the parts, the page itself last. */
  place?: readonly { text: string; href?: string }[]
  children: ReactNode
}

/** The frame of every page about parts of the works. */
export const PartsSheet = ({ place = [], ...sheet }: PartsSheetProps) => (
  <DeskSheet
    {...sheet}
    at={partsAddress()}
    place={[
      { text: 'Works', href: worksAddress() },
      place.length > 0 ? { text: 'Parts', href: partsAddress() } : { text: 'Parts' },
      ...place,
    ]}
  />
)
