import fc from 'fast-check'
import { expect, test } from 'vitest'
import { jointKey, jointOfKey, SUBJECT_KINDS, subjectFromText, subjectText } from '@/shared/reviews/subject'

const name = fc.string({ minLength: 1, maxLength: 20, unit: 'binary' }).filter((text) => text.trim() !== '')

test('a joint is found again by its key, whatever its names contain', () => {
  fc.assert(
    fc.property(name, name, (assembly, joint) => {
      expect(jointOfKey(jointKey(assembly, joint))).toEqual({
        assembly: assembly.trim(),
        joint: joint.trim(),
      })
    }),
  )
})

test('a subject is found again by its text', () => {
  fc.assert(
    fc.property(fc.constantFrom(...SUBJECT_KINDS), name, (kind, key) => {
      expect(subjectFromText(subjectText({ kind, key }))).toEqual({ kind, key })
    }),
  )
})

test('what is no subject is none', () => {
  for (const text of ['', 'item', 'item:', 'nothing:x', ':x']) expect(subjectFromText(text)).toBeUndefined()
  for (const key of ['', 'a', 'a/b/c', '/b', '%/b']) expect(jointOfKey(key)).toBeUndefined()
})
