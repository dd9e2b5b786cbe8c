import { describe, expect, test } from 'vitest'
import { leadProjection, leadProjectionAtMost } from '@/shared/plan/parameters/joint-geometry'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { productClass } from '@/shared/plan/parameters/programme'
import { leadProjectionRule } from '@/shared/rules/specification/lead-projection'
import { afterRemedy, factsWith, findingOf, set } from '../facts-builder'
import { leadHole } from './lead-hole-rows'

const board = (grade: '1' | '2' | '3', atMaxMm: number, row: Partial<LeadHole> = {}) => ({
  values: [
    set(productClass, grade),
    set(leadHoles, [leadHole(row)]),
    set(leadProjection, 0.5),
    set(leadProjectionAtMost, atMaxMm),
  ],
})

describe('leads beyond the land', () => {
  // IPC-A-610F, Table 7-3, supported holes: class 2 at most 2.5 mm, class 3 at most 1.5 mm (from memory).
  test.each([
    ['2', 2.5, 'meets'],
    ['2', 2.6, 'fails'],
    ['3', 1.5, 'meets'],
    ['3', 1.6, 'fails'],
    ['1', 2.5, 'meets'],
  ] as const)('class %s, %s mm: %s', (grade, atMaxMm, verdict) => {
    expect(findingOf(leadProjectionRule, board(grade, atMaxMm)).verdict).toBe(verdict)
  })
  test('the length of the remedy meets', () => {
    expect(afterRemedy(leadProjectionRule, factsWith(board('3', 2))).verdict).toBe('meets')
  })
  // IPC-A-610F, Table 7-6 and 7.4.4: in unsupported holes of class 3 the lead is long enough to clinch, and
  // clinched; of classes 1 and 2 its end is to be seen (secondary copy).
  test.each([
    ['3', undefined, 'undetermined'],
    ['3', false, 'fails'],
    ['3', true, 'meets'],
    ['2', undefined, 'meets'],
  ] as const)('class %s in an unplated hole, clinched %s: %s', (grade, clinched, verdict) => {
    expect(findingOf(leadProjectionRule, board(grade, 2, { plated: false, clinched })).verdict).toBe(verdict)
  })
  test('a clinched lead of class 3 may be longer than a straight one', () => {
    const clinched = board('3', 4, { plated: false, clinched: true })
    expect(findingOf(leadProjectionRule, clinched).verdict).toBe('meets')
  })
  test('a greatest length below the least contradicts it', () => {
    expect(findingOf(leadProjectionRule, board('2', 0.4)).verdict).toBe('undetermined')
  })
})
