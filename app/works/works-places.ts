import * as to from '@/app/addresses'
import type { Place } from '@/app/ui/place-nav'
import type { SignedIn } from '@/lib/auth/session'

/** The places of the works, in the order of its tabs; an administrator reads of its people and rules alone. */
export function worksPlaces({ administrator }: Pick<SignedIn, 'administrator'>): Place[] {
  const forAll = [
    { text: 'People', href: to.worksPeopleAddress() },
    { text: 'Company rules', href: to.companyRulesAddress() },
  ]
  if (administrator) return forAll
  return [
    { text: 'Lines', href: to.worksAddress() },
    { text: 'Suppliers', href: to.suppliersAddress() },
    { text: 'Store', href: to.storeAddress() },
    { text: 'Parts', href: to.partsAddress() },
    ...forAll,
    { text: 'Programmes compared', href: to.programmesComparedAddress() },
  ]
}
