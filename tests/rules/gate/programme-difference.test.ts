import { describe, expect, test } from 'vitest'
import { judgeProgramme } from '@/shared/gate/judgement'
import { programmeDifference } from '@/shared/gate/programme-difference'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { coat, signedUpTo, width } from '@/tests/rules/gate/small-programme'

/* What counts as a difference of two programmes is this project's own decision, with no source outside it. */

const board = signedUpTo('specification')
const withValues = (...values: readonly (readonly [string, unknown])[]): ProgrammeState => ({
  ...board,
  facts: { ...board.facts, values: new Map(values) },
})
const compared = (one: ProgrammeState, other: ProgrammeState) =>
  programmeDifference(
    { state: one, judgement: judgeProgramme(one) },
    { state: other, judgement: judgeProgramme(other) },
  )

describe('two programmes', () => {
  test('that say the same differ in nothing, and how much was compared is told', () => {
    expect(compared(board, board)).toEqual({ values: [], limits: [], verdicts: [], items: [], compared: 4 })
  })
  test('differ in a value, and in the finding that it turns', () => {
    const { values, verdicts } = compared(board, withValues([coat.key, 3], [width.key, 1]))
    expect(values).toEqual([{ parameter: coat, one: 8, other: 3 }])
    expect(verdicts.map(({ rule, one, other }) => [rule.id, one, other])).toEqual([
      ['test-coat-least', 'meets', 'fails'],
    ])
  })
  test('differ where one says nothing, and are undetermined there', () => {
    const { values, verdicts } = compared(withValues([width.key, 1]), board)
    expect(values).toEqual([{ parameter: coat, one: undefined, other: 8 }])
    expect(verdicts.map(({ rule, one }) => [rule.id, one])).toEqual([
      ['test-coat-least', 'undetermined'],
      ['test-storage', 'undetermined'],
    ])
  })
  test('differ in an item that one of them has set aside, once quality has agreed', () => {
    const aside = (agreed: boolean): ProgrammeState => ({
      ...board,
      items: board.items.map((item) =>
        item.definition.key === 'coupons'
          ? {
              ...item,
              tailoredOut: {
                reason: 'No coupons.',
                proposedById: 'l',
                proposedByName: 'L',
                proposedAt: '2026-01-01T00:00:00.000Z',
                agreed: agreed ? { byId: 'q', byName: 'Q', at: '2026-01-02T00:00:00.000Z' } : null,
              },
            }
          : item,
      ),
    })
    expect(compared(board, aside(true)).items).toEqual([{ key: 'coupons', title: 'coupons', in: 'one' }])
    expect(compared(aside(true), board).items).toEqual([{ key: 'coupons', title: 'coupons', in: 'other' }])
    expect(compared(board, aside(false)).items).toEqual([])
  })
})
