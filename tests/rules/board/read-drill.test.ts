import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readDrill } from '@/shared/board/drill/read-drill'
import { Unreadable } from '@/shared/board/unreadable'
import { drillMm } from './small-board'

// What the format's files hold is common practice: it has no published standard that is kept up.

test('reads holes with modal coordinates, tools and sizes', () => {
  const { holes, assumed } = readDrill(
    drillMm({ T1: 0.8, T2: 1.1 }, 'T1', 'X1.0Y2.0', 'Y4.0', 'T2', 'X10.0Y10.0'),
  )
  expect(holes.map(({ a, diameterMm }) => [...a, diameterMm])).toEqual([
    [1, 2, 0.8],
    [1, 4, 0.8],
    [10, 10, 1.1],
  ])
  expect(assumed).toEqual([])
})

test.each([
  ['INCH,TZ', 'X10000Y5000', [25.4, 12.7], 'trailing zeros kept: counted from the right, 2:4'],
  ['INCH,LZ', 'X01Y005', [25.4, 12.7], 'leading zeros kept: counted from the left, 2:4'],
  ['METRIC,TZ', 'X10000Y5000', [10, 5], '3:3'],
  ['METRIC,LZ', 'X01Y005', [10, 5], '3:3'],
  ['METRIC,TZ,000.00', 'X1000Y500', [10, 5], 'the places that the header shows'],
])('reads %s, %s', (header, place, expected) => {
  const { holes } = readDrill(`M48\n${header}\nT1C0.03\n%\nT1\n${place}\nM30\n`)
  expect(holes[0]!.a.map((mm) => Math.round(mm * 1e6) / 1e6)).toEqual(expected)
})

test('says what it took for granted, and reads otherwise when told', () => {
  const text = 'M48\nT1C0.03\n%\nT1\nX10000Y5000\nM30\n'
  expect(readDrill(text).assumed).toEqual(['unit', 'digits', 'zeros'])
  const told = readDrill(text, { unit: 'mm', integerDigits: 3, decimals: 3, kept: 'trailing' })
  expect([told.holes[0]!.a, told.assumed]).toEqual([[10, 5], []])
})

test('reads slots both ways, one that is cut to and fro once, and repeats', () => {
  const g85 = readDrill(drillMm({ T1: 1 }, 'T1', 'X1.0Y1.0G85X3.0Y1.0'))
  expect(g85.holes).toMatchObject([{ a: [1, 1], b: [3, 1], diameterMm: 1 }])
  const routed = readDrill(
    drillMm({ T1: 1 }, 'T1', 'G00X1.0Y1.0', 'M15', 'G01X3.0Y1.0', 'G01X1.0Y1.0', 'M16', 'G05'),
  )
  expect(routed.holes).toMatchObject([{ a: [1, 1], b: [3, 1] }])
  const repeated = readDrill(drillMm({ T1: 1 }, 'T1', 'X1.0Y1.0', 'R3X2.54'))
  expect(repeated.holes.map(({ a }) => a[0])).toEqual([1, 3.54, 6.08, expect.closeTo(8.62, 9)])
})

test('reads plating and use where comments say them', () => {
  const { holes } = readDrill(
    [
      'M48',
      'METRIC',
      '; #@! TA.AperFunction,Plated,PTH,ComponentDrill',
      'T1C0.800',
      '; #@! TA.AperFunction,NonPlated,NPTH,MechanicalDrill',
      'T2C3.200',
      '%',
      'T1',
      'X1.0Y1.0',
      'T2',
      'X5.0Y5.0',
      'M30',
    ].join('\n'),
  )
  expect(holes.map(({ plated, use }) => [plated, use])).toEqual([
    [true, 'ComponentDrill'],
    [false, 'MechanicalDrill'],
  ])
})

test.each([
  ['counts from the last point', drillMm({ T1: 1 }, 'G91', 'T1', 'X1.0'), 6, /G91/],
  ['drills with a tool of no size', drillMm({ T1: 1 }, 'T7', 'X1.0Y1.0'), 6, /T7 is chosen but has no size/],
  ['routes an arc', drillMm({ T1: 1 }, 'T1', 'G02X1.0Y1.0A0.5'), 7, /arc/],
  [
    'repeats without end',
    drillMm({ T1: 1 }, 'T1', 'X1.0Y1.0', 'R999999999X1.0'),
    8,
    /more than 200000 holes/,
  ],
  ['holds what nobody knows', drillMm({ T1: 1 }, 'T1', 'Q1.0'), 7, /not understood/],
  ['holds nothing', '', 1, /no hole/],
])('refuses a file that %s, with the line', (_, text, line, reason) => {
  expect(() => readDrill(text)).toThrow(reason)
  try {
    readDrill(text)
  } catch (error) {
    expect((error as Unreadable).line).toBe(line)
  }
})

test('law: whatever is written over, a file is read or refused with a line', () => {
  const sound = drillMm(
    { T1: 0.8, T2: 1.1 },
    'T1',
    'X1.0Y2.0',
    'R3X2.54',
    'T2',
    'G00X1.0Y1.0',
    'M15',
    'G01X3.0',
    'M16',
  )
  const spoilt = fc
    .tuple(fc.nat(sound.length), fc.nat(20), fc.string({ maxLength: 10 }))
    .map(([place, taken, written]) => sound.slice(0, place) + written + sound.slice(place + taken))
  fc.assert(
    fc.property(spoilt, (text) => {
      try {
        for (const { a, b, diameterMm } of readDrill(text).holes)
          expect([...a, ...b, diameterMm].every(Number.isFinite)).toBe(true)
      } catch (error) {
        expect(error).toBeInstanceOf(Unreadable)
      }
    }),
    { numRuns: 500 },
  )
})
