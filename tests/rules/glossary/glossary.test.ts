import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { GLOSSARY, glossaryDocument } from '@/shared/glossary/glossary'

const terms = GLOSSARY.flatMap((section) => section.terms)

test('docs/glossary.md says what the program says', () => {
  expect(readFileSync('docs/glossary.md', 'utf8')).toBe(glossaryDocument())
})

test('each term stands once, and none is a word given up for another', () => {
  const names = terms.map(({ term }) => term)
  expect(new Set(names).size).toBe(names.length)
  const givenUp = new Set(terms.flatMap(({ insteadOf }) => insteadOf ?? []))
  expect(names.filter((name) => givenUp.has(name))).toEqual([])
})
