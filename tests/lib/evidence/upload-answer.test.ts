import { describe, expect, test } from 'vitest'
import { openUploadAnswer, sealUploadAnswer } from '@/lib/evidence/upload-answer'

const NOW = Date.parse('2026-03-02T10:00:00Z')
const ANSWER = { refused: 'The file is empty – send another.', kind: 'drawing', note: 'Revision C' }
const sealed = sealUploadAnswer(ANSWER, 'secret', NOW)

describe('a sealed answer to an upload', () => {
  test('says what was put into it', () => expect(openUploadAnswer(sealed, 'secret', NOW)).toEqual(ANSWER))
  test('is void after ten minutes', () => {
    expect(openUploadAnswer(sealed, 'secret', NOW + 600_000)).toEqual(ANSWER)
    expect(openUploadAnswer(sealed, 'secret', NOW + 600_001)).toEqual({})
  })
  test('says nothing when another installation sealed it, or its words were changed', () => {
    const other = sealUploadAnswer({ ...ANSWER, refused: 'Call this number.' }, 'secret', NOW)
    const forged = `${other.split('.')[0]}.${sealed.split('.')[1]}`
    expect(openUploadAnswer(sealed, 'another', NOW)).toEqual({})
    expect(openUploadAnswer(forged, 'secret', NOW)).toEqual({})
  })
  test.each([undefined, '', '.', 'x', 'e30.', `${'a'.repeat(5000)}.b`])(
    'nonsense %# says nothing',
    (text) => {
      expect(openUploadAnswer(text, 'secret', NOW)).toEqual({})
    },
  )
  test('cuts what would not fit into an address', () => {
    const long = sealUploadAnswer({ note: 'n'.repeat(100_000) }, 'secret', NOW)
    expect(long.length).toBeLessThan(1200)
  })
})
