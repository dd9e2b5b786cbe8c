import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { componentOfJoint } from '@/shared/inspection/component-of-joint'
import { DEFECT_KINDS } from '@/shared/records/inspection'
import { nextSerial } from '@/shared/inspection/next-serial'
import { kindMeantBy, kindsMeantBy } from '@/shared/inspection/typed-defect-kind'

describe('the next serial number', () => {
  test.each([
    ['LX41-0057', 'LX41-0058'],
    ['LX41-0099', 'LX41-0100'],
    ['A9', 'A10'],
    ['7', '8'],
    ['57B', '58B'],
    ['B2-09 rev A', 'B2-10 rev A'],
    ['no number', ''],
    ['', ''],
  ])('%s is followed by %s', (serial, next) => expect(nextSerial(serial)).toBe(next))
  test('passes over those already looked at', () =>
    expect(nextSerial('A-1', new Set(['A-2', 'A-3', 'A-5']))).toBe('A-4'))
  test('law: it keeps its length until the digits are full, and never names one taken', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 998 }),
        fc.array(fc.integer({ min: 0, max: 998 })),
        (at, taken) => {
          const name = (number: number) => `S-${String(number).padStart(3, '0')}`
          const next = nextSerial(name(at), new Set(taken.map(name)))
          expect(taken.map(name)).not.toContain(next)
          expect(next).toHaveLength(5)
        },
      ),
    )
  })
})

describe('a kind of defect picked by typing', () => {
  test.each([
    ['bridge', 'bridge'],
    ['Br', 'bridge'],
    ['  NON wetting ', 'non-wetting'],
    ['dew', 'dewetting'],
    ['hnf', 'hole not filled'],
    ['sb', 'solder ball'],
    ['ins', 'insufficient solder'],
    ['land', 'lifted land'],
    ['blow', 'blowhole'],
  ])('“%s” means %s', (typed, kind) => expect(kindMeantBy(typed)).toBe(kind))
  test.each(['', 'i', 'joint', 'xyz'])('“%s” means none for sure', (typed) =>
    expect(kindMeantBy(typed)).toBeUndefined(),
  )
  test('“i” could be either of two', () =>
    expect(kindsMeantBy('i')).toEqual(['insufficient solder', 'icicle']))
  test('law: every whole name means itself', () => {
    for (const kind of DEFECT_KINDS) expect(kindMeantBy(kind)).toBe(kind)
  })
})

describe('the component of a joint', () => {
  const rows = ['T1', 'T10', 'R1–R40', 'C1-22', 'U1–U9', 'J1, J4']
  test.each([
    ['T1-3', 'T1'],
    ['t1.9', 'T1'],
    ['T10-4', 'T10'],
    ['R40-1', 'R1–R40'],
    ['R41-1', undefined],
    ['C22-2', 'C1-22'],
    ['U3-4', 'U1–U9'],
    ['J4-2', 'J1, J4'],
    ['J2-2', undefined],
    ['X7-1', undefined],
    ['', undefined],
  ])('%s belongs to %s', (joint, component) => expect(componentOfJoint(joint, rows)).toBe(component))
})
