import * as to from '@/app/addresses'
import type { Place } from '@/app/ui/place-nav'

/** The places of the works, in the order of its tabs. */
export const worksPlaces = (): Place[] => [
  { text: 'Lines', href: to.worksAddress() },
  { text: 'Suppliers', href: to.suppliersAddress() },
  { text: 'Store', href: to.storeAddress() },
  { text: 'Parts', href: to.partsAddress() },
  { text: 'Programmes compared', href: to.programmesComparedAddress() },
]
