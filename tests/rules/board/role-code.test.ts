import { expect, test } from 'vitest'
import { codeOfRole, placementChoices, roleChoices, roleFrom, roleLabel } from '@/shared/board/role-code'

test('every role that can be chosen is kept by its word and found again, under a name of its own', () => {
  const choices = [
    ...(['gerber', 'drill', 'netlist', 'parts list'] as const).flatMap((format) => roleChoices(format, 4)),
    ...placementChoices({ sides: false, unit: false, wouldMove: true }),
  ]
  for (const { value, text } of choices) {
    const role = roleFrom(value)!
    expect(codeOfRole(role)).toBe(value)
    expect(roleLabel(role)).toBe(text)
  }
  const codes = new Set(choices.map(({ value }) => value))
  expect(new Set(choices.map(({ text }) => text)).size).toBe(codes.size)
  // Three sides said or not, four units said or not, moved or not; and not read at all.
  expect(placementChoices({ sides: false, unit: false, wouldMove: true })).toHaveLength(3 * 4 * 2 + 1)
})

test('of a placement only what its file leaves open is asked', () => {
  expect(placementChoices({ sides: true, unit: true, wouldMove: false })).toEqual([
    { value: 'placement', text: 'Placement of components' },
    { value: 'other', text: 'Not read for the board' },
  ])
  expect(placementChoices({ sides: true, unit: false, wouldMove: false }).map(({ value }) => value)).toEqual([
    'placement',
    'placement-mm',
    'placement-inch',
    'placement-mil',
    'other',
  ])
  expect(roleFrom('placement-bottom-mil-moved')).toEqual({
    kind: 'placement',
    side: 'bottom',
    unit: 'mil',
    moved: true,
  })
})

test.each(['placement-left', 'placement-moved-mm', 'placement-', 'constructor', ''])(
  '“%s” is no role',
  (code) => expect(roleFrom(code)).toBeUndefined(),
)
