import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { findingData, sameFinding } from '@/shared/gate/finding-data'
import type { Finding, Part } from '@/shared/rules/finding'

const found = (value: number, limit = 1000): Finding => ({
  rule: 'test',
  version: 1,
  verdict: 'fails',
  margin: { found: value, limit, unit: 'µm', direction: 'at most', guardBand: 0 },
  measured: { width: { value, unit: 'µm' } },
  found: `It is ${value} µm.`,
  limit: `${limit} µm`,
  working: [],
  sources: [],
})
const withPart = (part: Part): Finding => ({ ...found(1), parts: [part] })
const part = (over: Partial<Part>): Part => ({
  subject: 'Hole A',
  verdict: 'fails',
  found: 'too wide',
  ...over,
})

describe('the data of a finding', () => {
  test('names every number with its unit, and no sentence', () => {
    expect(JSON.parse(findingData(found(0.1 + 0.2)))).toEqual({
      form: 2,
      rule: 'test',
      version: 1,
      verdict: 'fails',
      margin: { found: 0.3, limit: 1000, unit: 'µm', direction: 'at most' },
      measured: { width: { value: 0.3, unit: 'µm' } },
      parts: [],
    })
  })

  test('can be written for every number there is', () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (value, limit) =>
        sameFinding(found(value, limit), { ...found(value, limit) }),
      ),
    )
  })

  test('does not tell dust apart: another order of adding up is the same finding', () => {
    const parts = fc.array(
      fc.integer({ min: 1, max: 999_999 }).map((micro) => micro / 1000),
      { minLength: 2 },
    )
    fc.assert(
      fc.property(parts, (values) => {
        const sum = (numbers: readonly number[]) => numbers.reduce((one, other) => one + other, 0)
        return sameFinding(found(sum(values)), found(sum(values.toReversed())))
      }),
    )
  })

  test.each([
    ['a figure that anybody would read', found(0.123_456), found(0.123_457)],
    ['one more of many counted', found(1_234_567_890), found(1_234_567_891)],
    ['a number and one beyond measure', found(1e300), found(Infinity)],
    ['what cannot be computed and nothing', found(NaN), found(0)],
    ['another limit', found(1), found(1, 999)],
    ['another verdict', found(1), { ...found(1), verdict: 'undetermined' as const }],
    ['another version of the rule', found(1), { ...found(1), version: 2 }],
    ['another part', withPart(part({})), withPart(part({ subject: 'Hole B' }))],
    [
      'another part, told by data',
      withPart(part({ about: { hole: 'A' } })),
      withPart(part({ about: { hole: 'B' } })),
    ],
    [
      'another number of a part',
      withPart(part({ measured: { width: { value: 1, unit: 'mm' } } })),
      withPart(part({ measured: { width: { value: 2, unit: 'mm' } } })),
    ],
    ['a part more that is not known', found(1), withPart(part({ verdict: 'undetermined' }))],
  ])('tells apart %s', (_, one, other) => {
    expect(findingData(one)).not.toBe(findingData(other))
  })

  test.each<[string, Finding, Finding]>([
    ['sentences', found(1), { ...found(1), found: 'Otherwise.', limit: 'Otherwise.' }],
    [
      'what a part is called, where data tells',
      withPart(part({ about: { hole: 'A' } })),
      withPart(part({ about: { hole: 'A' }, subject: 'The hole A', found: 'wide' })),
    ],
    ['a part that meets', found(1), withPart(part({ verdict: 'meets' }))],
  ])('leaves out %s', (_, one, other) => {
    expect(findingData(one)).toBe(findingData(other))
  })
})
