import { scaleLinear, scaleUtc } from 'd3-scale'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dotStacks } from '@/app/drawing/dot-stacks'
import { hatchRectangle } from '@/app/drawing/hatch-rectangle'
import { leadSides, tolerancedText } from '@/app/drawing/lead-geometry'
import { POINT_SHAPES, pointShape, shapeFor } from '@/app/drawing/point-shape'
import { roomForText } from '@/app/drawing/room-for-text'
import { spreadLabels } from '@/app/drawing/spread-labels'
import { axisTitle, numberTicks, timeTicks } from '@/app/drawing/ticks'
import { pagesToOffer } from '@/app/ui/pages-to-offer'

describe('section lining', () => {
  test('stays inside its rectangle and runs at 45°', () => {
    const sides = fc.integer({ min: 1, max: 200 })
    fc.assert(
      fc.property(
        sides,
        sides,
        sides,
        sides,
        fc.integer({ min: 2, max: 30 }),
        (x, y, width, height, spacing) => {
          for (const [, ...ends] of hatchRectangle(x, y, width, height, spacing).matchAll(
            /M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)/g,
          )) {
            const [fromX, fromY, toX, toY] = ends.map(Number) as [number, number, number, number]
            for (const end of [fromX, toX]) expect(end >= x - 0.01 && end <= x + width + 0.01).toBe(true)
            for (const end of [fromY, toY]) expect(end >= y - 0.01 && end <= y + height + 0.01).toBe(true)
            expect(Math.abs(fromX - toX - (fromY - toY))).toBeLessThan(0.05)
          }
        },
      ),
    )
  })
  test('needs a spacing', () => {
    expect(() => hatchRectangle(0, 0, 1, 1, 0)).toThrow(RangeError)
  })
})

describe('labels moved apart', () => {
  test('labels with room stay where they belong', () => {
    expect(spreadLabels([100, 10, 50], 15, 0, 120)).toEqual([100, 10, 50])
  })
  test('keep their order, their gap and their bounds while there is room', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 300 }), { maxLength: 12 }), (wanted) => {
        const placed = spreadLabels(wanted, 15, 0, 300)
        const rising = placed.toSorted((a, b) => a - b)
        expect(rising.every((at, position) => position === 0 || at - rising[position - 1]! >= 15)).toBe(true)
        expect(placed.every((at) => at >= 0 && at <= 300)).toBe(true)
        wanted.forEach((one, a) =>
          wanted.forEach((other, b) => {
            if (one < other) expect(placed[a]!).toBeLessThan(placed[b]!)
          }),
        )
      }),
    )
  })
})

describe('stacked dots', () => {
  test('equal readings stand on one another', () => {
    expect(dotStacks([2, 2, 2], (value) => value, 1).map(({ level }) => level)).toEqual([0, 1, 2])
  })
  test('lose no reading and overprint none', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -50, max: 50, noNaN: true })), (values) => {
        const dots = dotStacks(values, (value) => value * 3, 9)
        expect(dots.map(({ value }) => value)).toEqual(values.toSorted((a, b) => a - b))
        expect(new Set(dots.map(({ at, level }) => `${at} ${level}`)).size).toBe(values.length)
      }),
    )
  })
  test('need a width', () => {
    expect(() => dotStacks([1], (value) => value, 0)).toThrow(RangeError)
  })
})

describe('ticks', () => {
  test('group digits by a narrow space and carry a real minus sign (ISO 80000-1, from memory; four digits stay together, SI Brochure 5.4.4)', () => {
    expect(numberTicks(scaleLinear([-10_000, 10_000], [0, 100]), 4).map(({ text }) => text)).toEqual([
      '−10\u202f000',
      '−5000',
      '0',
      '5000',
      '10\u202f000',
    ])
  })
  test('keep one number of decimals along an axis', () => {
    expect(numberTicks(scaleLinear([0, 0.25], [0, 100]), 5).map(({ text }) => text)).toEqual([
      '0.00',
      '0.05',
      '0.10',
      '0.15',
      '0.20',
      '0.25',
    ])
  })
  test.each([
    ['2026-02-02T06:00:00Z', '2026-02-02T12:00:00Z', ['06:00', '09:00', '12:00']],
    ['2026-02-01T12:00:00Z', '2026-02-02T12:00:00Z', ['12:00', '2 Feb', '12:00']],
    ['2026-01-01T00:00:00Z', '2026-07-01T00:00:00Z', ['Jan 2026', 'Apr 2026', 'Jul 2026']],
  ])('from %s to %s read %j', (from, to, texts) => {
    const scale = scaleUtc([Date.parse(from), Date.parse(to)], [0, 300])
    expect(timeTicks(scale, 2).map(({ text }) => text)).toEqual(texts)
  })
  test('on an axis too short for every month, what one tick says keeps clear of the next', () => {
    const year = scaleUtc([Date.parse('2026-01-01'), Date.parse('2027-01-01')], [0, 600])
    const ticks = timeTicks(year, 8)
    expect(ticks.map(({ text }) => text)).toEqual([
      ...['Jan 2026', 'Mar 2026', 'May 2026', 'Jul 2026', 'Sept 2026', 'Nov 2026', 'Jan 2027'],
    ])
    for (const [at, tick] of ticks.slice(1).entries())
      expect(tick.at - ticks[at]!.at).toBeGreaterThan(roomForText([tick.text], 'wide'))
  })
  test('an axis without a unit has only its name', () => {
    expect(axisTitle('Force', 'mN')).toBe('Force, mN')
    expect(axisTitle('Aspect ratio', '')).toBe('Aspect ratio')
  })
})

describe('point shapes', () => {
  test('differ from one another, and repeat only after the eighth', () => {
    expect(new Set(POINT_SHAPES.map((shape) => pointShape(shape, 0, 0))).size).toBe(POINT_SHAPES.length)
    expect(shapeFor(8)).toBe(shapeFor(0))
    expect(shapeFor(7)).not.toBe(shapeFor(0))
  })
})

describe('leads', () => {
  test('a flat lead keeps its two sides, others have one', () => {
    const size = { min: 0.65, nominal: 0.7, greatest: 0.75 }
    const thin = { min: 0.2, nominal: 0.25, greatest: 0.3 }
    expect(leadSides({ form: 'flat', widthMm: size, thicknessMm: thin })).toEqual({
      across: size,
      deep: thin,
    })
    expect(leadSides({ form: 'round', diameterMm: size })).toEqual({ across: size, deep: size })
  })
  test.each([
    [{ min: 0.65, nominal: 0.7, greatest: 0.75 }, '⌀0.70 ±0.05'],
    [{ min: 0.95, nominal: 1, greatest: 1.1 }, '⌀1.00 +0.10/−0.05'],
    [{ min: 2, nominal: 2, greatest: 2 }, '⌀2.00'],
  ])('%o is written %s', (length, text) => {
    expect(tolerancedText(length, '⌀')).toBe(text)
  })
})

describe('pages to offer', () => {
  test.each([
    [1, 1, [1]],
    [1, 3, [1, 2, 3]],
    [7, 41, [1, 0, 6, 7, 8, 0, 41]],
    [41, 41, [1, 0, 40, 41]],
  ])('page %i of %i: %j', (page, pages, offered) => {
    expect(pagesToOffer(page, pages)).toEqual(offered)
  })
})
