import { describe, expect, test } from 'vitest'
import type { BoardFinishKey } from '@/shared/materials/board-finishes'
import { tinCoatingMin } from '@/shared/plan/limits/finishes'
import { boardFinish, boardFinishMin, boardFinishMax } from '@/shared/plan/parameters/finishes'
import { boardFinishThickness } from '@/shared/rules/specification/board-finish-thickness'
import { afterRemedy, factsWith, findingOf, requirement, set } from '../facts-builder'

const ordered = (finish: BoardFinishKey, min: number, max?: number) => ({
  values: [
    set(boardFinish, finish),
    set(boardFinishMin, min),
    ...(max === undefined ? [] : [set(boardFinishMax, max)]),
  ],
})

describe('board finish thickness', () => {
  // Common practice, no published source: tin or Sn60Pb40 of 5 to 10 µm.
  test.each([
    ['tin-lead-plated', 5, 10, 'meets'],
    ['tin-plated', 5, 10, 'meets'],
    ['tin-plated', 4.9, 10, 'fails'],
    ['tin-plated', 5, 10.1, 'fails'],
    ['tin-plated', 11, undefined, 'fails'],
    // IPC-4554: immersion tin of at least 1.0 µm; IPC-4553A: silver 0.12 to 0.4 µm; IPC-4552: gold from 0.05 µm.
    ['immersion-tin', 1, undefined, 'meets'],
    ['immersion-tin', 0.9, undefined, 'fails'],
    ['immersion-silver', 0.12, 0.4, 'meets'],
    ['immersion-silver', 0.12, 0.5, 'fails'],
    ['enig', 0.05, 0.12, 'meets'],
  ] as const)('%s ordered %s to %s µm %s', (finish, min, max, verdict) => {
    expect(findingOf(boardFinishThickness, ordered(finish, min, max)).verdict).toBe(verdict)
  })
  test.each([
    [3, 10],
    [5, 20],
    [12, undefined],
  ])('the remedy for %s to %s µm meets', (min, max) => {
    expect(afterRemedy(boardFinishThickness, factsWith(ordered('tin-plated', min, max))).verdict).toBe(
      'meets',
    )
  })
  test('least and most both wrong are answered in words, not with half a remedy', () => {
    const { remedy } = findingOf(boardFinishThickness, ordered('tin-plated', 3, 20))
    expect(remedy?.message).toContain('at least 5 µm and at most 10 µm')
    expect(remedy?.parameter).toBeUndefined()
  })
  test('an order that contradicts itself cannot be judged', () => {
    expect(findingOf(boardFinishThickness, ordered('tin-plated', 9, 6)).verdict).toBe('undetermined')
  })
  test('a finish without a window says so', () => {
    const finding = findingOf(boardFinishThickness, ordered('bare-copper', 0))
    expect(finding.found).toContain('judged elsewhere')
  })
  test('a customer’s thicker coat rules and is named', () => {
    const finding = findingOf(boardFinishThickness, {
      ...ordered('tin-plated', 5, 10),
      requirements: [requirement(tinCoatingMin, 8)],
    })
    expect(finding.verdict).toBe('fails')
    expect(finding.limit).toContain('CS-100 issue 2')
  })
})
