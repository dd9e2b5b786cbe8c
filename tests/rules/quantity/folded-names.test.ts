import fc from 'fast-check'
import { expect, test } from 'vitest'
import { foldedList, foldedNames } from '@/shared/quantity/folded-names'

test.each([
  [['R2', 'R1', 'R3', 'R7', 'A-1'], 'A-1, R1–R3, R7'],
  [['R1', 'R2'], 'R1, R2'],
  [['A-098', 'A-099', 'A-100', 'A-101'], 'A-098–A-101'],
  [['R9', 'R10', 'R11'], 'R9–R11'],
  [['lot B-01 (board)', 'lot B-02 (board)'], 'lot B-01 (board), lot B-02 (board)'],
  [['R1–R60', 'R61', 'R62', 'R63'], 'R1–R60, R61–R63'],
  [['2026-02-01', '2026-02-02', '2026-02-03'], '2026-02-01–2026-02-03'],
  [[], ''],
])('%j folds to %s', (names, folded) => {
  expect(foldedList(names)).toBe(folded)
})

test('law: nothing is left out, and nothing is added', () => {
  const names = fc.array(fc.tuple(fc.constantFrom('R', 'C'), fc.integer({ min: 1, max: 30 })))
  fc.assert(
    fc.property(names, (pairs) => {
      const given = new Set(pairs.map(([prefix, number]) => `${prefix}${number}`))
      const unfolded = foldedNames(given).flatMap((name) => {
        const [from = '', to] = name.split('–')
        if (to === undefined) return [from]
        const [first, last] = [Number(from.slice(1)), Number(to.slice(1))]
        return Array.from({ length: last - first + 1 }, (_, at) => `${from[0]}${first + at}`)
      })
      expect(new Set(unfolded)).toEqual(given)
      expect(unfolded).toHaveLength(given.size)
    }),
  )
})
