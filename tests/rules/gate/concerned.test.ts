import { expect, test } from 'vitest'
import { concernedInWords } from '@/shared/gate/concerned'
import type { Part, Verdict } from '@/shared/rules/finding'

const part = (subject: string, verdict: Verdict): Part => ({ subject, verdict, found: 'so' })

test('every part that keeps a finding from passing is named, ranges folded, the worst first', () => {
  const parts = [
    part('J1', 'undetermined'),
    ...Array.from({ length: 60 }, (_, at) => part(`R${at + 1}`, 'fails')),
    part('U3', 'fails'),
    part('C1', 'meets'),
  ]
  expect(concernedInWords({ parts })).toBe('fails: R1–R60, U3; undetermined: J1')
})

test('one part alone is named by the finding itself', () => {
  expect(concernedInWords({ parts: [part('R1', 'fails'), part('R2', 'meets')] })).toBe('')
  expect(concernedInWords({})).toBe('')
})
