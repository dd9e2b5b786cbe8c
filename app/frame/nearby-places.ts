import * as to from '@/app/addresses'
import type { Place } from '@/app/ui/place-nav'
import { worksPlaces } from '@/app/works/works-places'

/** Where one can go from an address under which nothing is shown; without knowing who asks, for what they may read says the page there. */
export function nearbyPlaces(path: string): { readonly label: string; readonly places: readonly Place[] } {
  const find = { text: 'Find', href: to.findAddress() }
  const code = /^\/programmes\/([^/]+)/.exec(path)?.[1]
  if (code !== undefined && code !== 'new') return ofProgramme(decoded(code), find)
  if (/^\/works(\/|$)/.test(path))
    return { label: 'Works', places: [...worksPlaces({ administrator: false }), find] }
  return {
    label: 'Desk',
    places: [
      { text: 'Desk', href: to.deskAddress() },
      { text: 'Programmes', href: to.programmesAddress() },
      { text: 'Works', href: to.worksAddress() },
      { text: 'Lessons', href: to.lessonsAddress() },
      { text: 'Glossary', href: to.glossaryAddress() },
      find,
    ],
  }
}

const ofProgramme = (code: string, find: Place) => ({
  label: `Programme ${code}`,
  places: [
    { text: 'Programmes', href: to.programmesAddress() },
    { text: 'Route card', href: to.routeCardAddress(code) },
    { text: 'Specification', href: to.specificationAddress(code) },
    { text: 'Actions', href: to.actionsAddress(code) },
    { text: 'Lots', href: to.lotsAddress(code) },
    { text: 'Inspections', href: to.inspectionsAddress(code) },
    { text: 'Trail', href: to.trailAddress(code) },
    find,
  ],
})

/** As it was typed, where it is no encoded text at all. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part)
  } catch {
    return part
  }
}
