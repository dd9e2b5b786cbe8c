import { expect, test } from 'vitest'
import { nearbyPlaces } from '@/app/frame/nearby-places'

test.each([
  ['/programmes/LX-41/nowhere', 'Programme LX-41', '/programmes/LX-41'],
  ['/programmes/A%20B/items/x', 'Programme A B', '/programmes/A%20B'],
  ['/programmes/%zz/items', 'Programme %zz', '/programmes/%25zz'],
  ['/works/machines/Fluxer%201/logs/x', 'Works', '/works/suppliers'],
  ['/works', 'Works', '/works'],
  ['/workshop', 'Desk', '/'],
  ['/programmes/new', 'Desk', '/programmes'],
  ['/', 'Desk', '/'],
])('from %s one can go on in %s', (path, label, href) => {
  const nearby = nearbyPlaces(path)
  expect(nearby.label).toBe(label)
  expect(nearby.places.map((place) => place.href)).toContain(href)
})

test('every address that shows nothing leads to what finds anything, and to no place twice', () => {
  for (const path of ['/programmes/X/y', '/works/x', '/x']) {
    const addresses = nearbyPlaces(path).places.map(({ href }) => href)
    expect(addresses).toContain('/find')
    expect(new Set(addresses).size).toBe(addresses.length)
  }
})
