import fc from 'fast-check'
import { expect, test } from 'vitest'
import { referencesIn, referencesInBrief } from '@/shared/works/references'

test('three and more that follow each other are a range, in the order of their numbers', () => {
  expect(referencesInBrief(['R12', 'R2', 'R1', 'R3', 'C7', 'R9', 'R10'])).toBe('C7, R1–R3, R9, R10, R12')
  expect(referencesInBrief(['X-1', 'X-2', 'X-3'])).toBe('X-1–X-3')
  expect(referencesInBrief([])).toBe('')
})

test('names that would read otherwise in a range stand alone', () => {
  expect(referencesInBrief(['R01', 'R02', 'R03'])).toBe('R01, R02, R03')
  expect(referencesInBrief(['R1A', 'R2A', 'R3A'])).toBe('R1A, R2A, R3A')
})

test('what is listed in brief is read as the same names', () => {
  const name = fc
    .tuple(
      fc.constantFrom('R', 'C', 'X-', 'SW_', 'r'),
      fc.integer({ min: 0, max: 30 }),
      fc.constantFrom('', '', 'A'),
    )
    .map((parts) => parts.join('').toUpperCase())
  fc.assert(
    fc.property(fc.uniqueArray(name, { maxLength: 40 }), (names) => {
      const read = referencesIn(referencesInBrief(names)).names!
      expect([...read].sort()).toEqual([...names].sort())
    }),
  )
})
