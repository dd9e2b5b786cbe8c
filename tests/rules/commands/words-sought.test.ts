import { expect, test } from 'vitest'
import { COMMAND_NAMES, faceOf } from '@/shared/commands/all-faces'
import { wordsSought } from '@/shared/commands/words-sought'

test('every verb that a trail shows is found by each of its longer words', () => {
  for (const name of COMMAND_NAMES)
    for (const word of faceOf(name)
      .done.split(/[^\p{L}]+/u)
      .filter((part) => part.length >= 3))
      expect(wordsSought(word)[0]?.commands, `${name}: ${word}`).toContain(name)
})

test('a name that is shown is sought by the key that entries hold', () => {
  const [service, years] = wordsSought('Service YEARS')
  expect(service?.keys).toContain('service-years')
  expect(years?.word).toBe('YEARS')
})

test('a short word is sought as it is written, and nothing is sought of no text', () => {
  expect(wordsSought('of')).toEqual([{ word: 'of', commands: [], keys: [] }])
  expect(wordsSought('  ')).toEqual([])
  expect(wordsSought('a b c d e f g h i j')).toHaveLength(8)
})
