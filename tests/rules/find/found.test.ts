import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { FIND_GROUPS } from '@/shared/find/find-groups'
import type { Findable } from '@/shared/find/findable'
import { folded, wordsOf } from '@/shared/find/folded'
import { foundIn } from '@/shared/find/found'
import { matchOf } from '@/shared/find/match'

const named = (label: string, more: Partial<Findable<string>> = {}): Findable<string> => ({
  group: 'item',
  label,
  also: [],
  where: label,
  ...more,
})
const labels = (query: string, findables: readonly Findable<string>[], here?: string): string[] =>
  foundIn(query, findables, { here, most: 9 }).flatMap(({ matches }) => matches.map(({ label }) => label))

/*
 * Unicode Standard Annex #15, figures 4 and 6: ﬁ is "fi" and 2⁵ is "25" in NFKD; é, and Å from the Ångström sign, fall
 * apart into letter and mark. ß as "ss": Unicode 16, CaseFolding.txt, status F.
 */
test.each([
  ['ﬁ', 'fi'],
  ['2⁵', '25'],
  ['Été', 'ete'],
  ['Å', 'a'],
  ['STRAẞE', 'strasse'],
  ['Ørsted', 'orsted'],
])('%s is compared as %s', (text, plain) => expect(folded(text)).toBe(plain))

describe('a better match stands first', () => {
  test('the whole, its beginning, a whole word, a word’s beginning, inside', () => {
    const findables = ['Influx', 'New fluxes', 'Solder, flux, paste', 'Flux removal', 'Flux'].map((label) =>
      named(label),
    )
    expect(labels('flux', findables)).toEqual([
      'Flux',
      'Flux removal',
      'Solder, flux, paste',
      'New fluxes',
      'Influx',
    ])
  })
  test('a number typed in full finds its lot first, though others have it in them', () => {
    const lots = [named('P-3110'), named('X', { also: ['P-311'] }), named('P-311')]
    expect(labels('p-311', lots)).toEqual(['X', 'P-311', 'P-3110'])
  })
  test('the label before what is said beside it', () =>
    expect(labels('tin', [named('A', { also: ['Tin bath'] }), named('Tin bath')])).toEqual(['Tin bath', 'A']))
  test('what lies in the programme one is in comes first', () => {
    const findables = [named('Flux'), named('Old influx', { programme: 'A-1' })]
    expect(labels('flux', findables, 'A-1')).toEqual(['Old influx', 'Flux'])
    expect(labels('flux', findables)).toEqual(['Flux', 'Old influx'])
  })
  test('a group with an exact match stands before one without', () =>
    expect(labels('lot', [named('Lots'), named('Lot', { group: 'term' })])).toEqual(['Lot', 'Lots']))
})

test('every word has to be there; a programme’s code narrows, and alone finds nothing that lies in it', () => {
  const finish = named('Board finish', { programme: 'LX-41' })
  expect(matchOf(wordsOf('finish board'), finish)).toBeDefined()
  expect(matchOf(wordsOf('finish gold'), finish)).toBeUndefined()
  expect(matchOf(wordsOf('finish lx-41'), finish)).toBeDefined()
  expect(matchOf(wordsOf('lx-41'), finish)).toBeUndefined()
  expect(matchOf(wordsOf('  '), finish)).toBeUndefined()
})

test('no more of a group than asked for, with how many there are', () => {
  const [group] = foundIn(
    'a',
    Array.from({ length: 7 }, () => named('a')),
    { most: 5 },
  )
  expect(group?.matches).toHaveLength(5)
  expect(group?.all).toBe(7)
})

test('whatever is part of a label finds it, in any case and with or without accents', () => {
  const label = fc.string({ unit: fc.constantFrom(...'aAéÉøn 7-x'), minLength: 3, maxLength: 12 })
  fc.assert(
    fc.property(label, fc.nat(), fc.nat(), fc.constantFrom(...FIND_GROUPS), (text, from, length, group) => {
      const start = from % text.length
      const part = text.slice(start, start + 1 + (length % text.length))
      if (!part.trim()) return
      const found = foundIn(part.toUpperCase(), [named(text, { group })], { most: 1 })
      expect(found.map(({ matches }) => matches[0]?.label)).toEqual([text])
    }),
  )
})
