import { describe, expect, test } from 'vitest'
import { limit, governingRequirement, type Requirement } from '@/shared/plan/requirement'
import { governingInWords } from '@/shared/plan/governing-in-words'

const gap = limit({
  key: 'gap',
  label: 'Gap',
  unit: 'mm',
  direction: 'at least',
  byDefault: {
    value: 0.5,
    authority: 'standard',
    from: { cite: 'The default', how: 'common practice, no published source' },
  },
})
const stated = (over: Partial<Requirement>): Requirement => ({
  id: over.document ?? '',
  limit: 'gap',
  authority: 'customer',
  document: 'CS-1',
  clause: '',
  value: 0.6,
  relaxes: false,
  reason: '',
  lesson: null,
  ...over,
})
const words = (...requirements: Requirement[]) => governingInWords(governingRequirement(gap, requirements))

describe('why a layer rules', () => {
  test('the default alone', () => expect(words()).toBe('Default: The default.'))
  test('the strictest of several', () => {
    expect(words(stated({}), stated({ document: 'WN 3', authority: 'company', value: 0.55 }))).toBe(
      'CS-1, 0.6 mm, rules because it is the strictest (largest) of 3 layers.',
    )
  })
  test('one that relaxes sets aside what stands below, and names it', () => {
    expect(words(stated({ value: 0.4, relaxes: true }))).toBe(
      'CS-1 (customer) expressly permits 0.4 mm, which sets aside what stands below it: The default, 0.5 mm. It rules alone.',
    )
  })
  test('of its own authority, the strictest still rules', () => {
    expect(words(stated({ value: 0.4, relaxes: true }), stated({ document: 'CS-2', value: 0.7 }))).toBe(
      'CS-1 (customer) expressly permits 0.4 mm, which sets aside what stands below it: The default, 0.5 mm. Of the 2 left, CS-2, 0.7 mm, is the strictest.',
    )
  })
  test('one that relaxes with nothing below it sets nothing aside', () => {
    expect(words(stated({ authority: 'common practice', value: 0.4, relaxes: true }))).toBe(
      'CS-1 expressly permits its value, but nothing stands below it. Of the 2 left, The default, 0.5 mm, is the strictest.',
    )
  })
})
