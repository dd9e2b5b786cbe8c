import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { percentDots } from '@/app/drawing/percent-dots'

const of = (...values: number[]) => values.map((value) => ({ value }))
const asIs = (value: number) => value

describe('the dots of a strip', () => {
  test('stand where their readings are, and on one another where they would overprint', () => {
    expect(percentDots(of(10, 12, 10.5), asIs, 1)).toEqual([
      { value: 10, at: 10, level: 0 },
      { value: 10.5, at: 10.5, level: 1 },
      { value: 12, at: 12, level: 0 },
    ])
  })
  test('never meet one of their own level, and none is lost', () => {
    const reading = fc.double({ min: 0, max: 100, noNaN: true })
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 60 }), (values) => {
        const dots = percentDots(of(...values), asIs, 1.3)
        expect(dots).toHaveLength(values.length)
        for (const [at, one] of dots.entries())
          for (const other of dots.slice(at + 1))
            if (one.level === other.level) expect(other.at - one.at).toBeGreaterThanOrEqual(1.3)
      }),
    )
  })
  test('need a width', () => {
    expect(() => percentDots(of(1), asIs, 0)).toThrow(RangeError)
  })
})
