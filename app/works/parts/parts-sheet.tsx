import type { ReactNode } from 'react'
import { partsAddress } from '@/app/addresses'
import type { TitleCell } from '@/app/ui/title-block'
import { WorksSheet } from '@/app/works/works-sheet'
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
  <WorksSheet
    {...sheet}
    at={partsAddress()}
    place={[place.length > 0 ? { text: 'Parts', href: partsAddress() } : { text: 'Parts' }, ...place]}
  />
)
