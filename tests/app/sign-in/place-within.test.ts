import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { placeWithin } from '@/app/sign-in/place-within'

const HOST = 'http://liquidus.example'

describe('where a sign-in leads', () => {
  test.each(['/programmes', '/programmes/LX-41?stage=use#trail', '/audit?text=a%20b'])(
    'an address of this app is kept: %s',
    (then) => expect(placeWithin(then)).toBe(then),
  )

  test.each([
    '',
    'programmes',
    'https://evil.example/',
    '//evil.example',
    '/\\evil.example',
    '/\t/evil.example',
    '/\n/evil.example',
    '/\t\\evil.example',
    '/.//evil.example',
    '/a/..//evil.example',
    'javascript:alert(1)',
  ])('any other leads to the desk: %j', (then) => {
    expect(new URL(placeWithin(then), HOST).href).toBe(new URL(placeWithin(''), HOST).href)
  })

  test('whatever is asked for, the browser stays on this host', () => {
    const piece = fc.constantFrom(
      '/',
      '\\',
      '.',
      '..',
      '\t',
      '\n',
      '\r',
      '@',
      ':',
      'evil.example',
      '?',
      '#',
      ' ',
    )
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 10 }), (pieces) => {
        const place = placeWithin(pieces.join(''))
        expect(place).toMatch(/^\//)
        expect(new URL(place, HOST).origin).toBe(HOST)
      }),
    )
  })
})
