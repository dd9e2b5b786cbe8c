import { describe, expect, test } from 'vitest'
import { proposalOf, withProposal } from '@/shared/rules/proposal'
import type { Remedy } from '@/shared/rules/finding'

describe('what a remedy proposes', () => {
  test('one value of a parameter', () => {
    const proposal = proposalOf({ message: 'Order 5 µm.', parameter: 'coat', value: 5 })
    expect(proposal).toEqual({ parameter: 'coat', value: 5 })
    expect(withProposal(3, proposal!)).toBe(5)
  })
  test('one cell of a table; the other rows stay the same ones', () => {
    const remedy: Remedy = {
      message: 'Drill 1.1 mm.',
      cell: { parameter: 'holes', row: 1, column: 'holeMm', value: 1.1 },
    }
    const table = [{ holeMm: 1 }, { holeMm: 0.9, name: 'R1' }]
    const mended = withProposal(table, proposalOf(remedy)!) as typeof table
    expect(mended).toEqual([{ holeMm: 1 }, { holeMm: 1.1, name: 'R1' }])
    expect(mended[0]).toBe(table[0])
  })
  test('nothing, when it only says what to do', () => {
    expect(proposalOf({ message: 'Ask for a closer lead.' })).toBeUndefined()
    expect(proposalOf({ message: 'Thicker.', parameter: 'coat' })).toBeUndefined()
    expect(proposalOf(undefined)).toBeUndefined()
  })
  test('a value of nought is a value', () => {
    expect(proposalOf({ message: 'Leave none.', parameter: 'residue', value: 0 })?.value).toBe(0)
  })
})
