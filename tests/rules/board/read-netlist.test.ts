import { expect, test } from 'vitest'
import { isNetlist, readNetlist } from '@/shared/board/netlist/read-netlist'
import { Unreadable } from '@/shared/board/unreadable'
import { netlist, record } from './netlist-text'

/** Columns and units of IPC-D-356A, from memory; the same as in the files of two public boards (`real-boards.test.ts`). */

test('reads holes, lands and tooling holes in inches', () => {
  const { points, unit, unitAssumed } = readNetlist(
    netlist(
      'CUST 0',
      record({ net: 'GND', component: 'J1', pin: '3', hole: 400, plated: true, x: 10_000, y: -2_500 }),
      record({ net: 'GND', component: 'VIA', hole: 118, plated: true, x: 20_000, y: 0 }),
      record({ code: '327', net: '+5V', component: 'C16', pin: '1', layer: 2, x: 5_000, y: 5_000 }),
      record({ code: '367', hole: 787, plated: false, x: 0, y: 0 }),
    ),
  )
  expect([unit, unitAssumed]).toEqual(['inch', false])
  expect(points).toMatchObject([
    { net: 'GND', component: 'J1', pin: '3', via: false, kind: 'hole', plated: true, layer: 0 },
    { net: 'GND', via: true, kind: 'hole' },
    { net: '+5V', component: 'C16', pin: '1', kind: 'land', layer: 2 },
    { net: undefined, kind: 'tooling', plated: false },
  ])
  // 10 000 steps of 0.0001 in are an inch: 25.4 mm; a hole of 0.0400 in is 1.016 mm.
  expect(points[0]!.at.map((mm) => Number(mm.toFixed(6)))).toEqual([25.4, -6.35])
  expect(points[0]!.diameterMm).toBeCloseTo(1.016, 9)
  expect(points[1]).not.toHaveProperty('component')
})

test.each(['CUST 1', 'SI', 'CUST  1'])('reads %s in micrometres', (units) => {
  const { points, unit } = readNetlist(
    netlist(units, record({ net: 'A', hole: 900, plated: true, x: 12_540, y: 1 })),
  )
  expect(unit).toBe('mm')
  expect(points[0]!.at.map((mm) => Number(mm.toFixed(6)))).toEqual([12.54, 0.001])
  expect(points[0]!.diameterMm).toBeCloseTo(0.9, 9)
})

test('says where it took the unit for granted', () => {
  expect(readNetlist(netlist(undefined, record({ x: 1, y: 1 })))).toMatchObject({
    unit: 'inch',
    unitAssumed: true,
  })
})

test('puts long names in the place of their short ones', () => {
  const { points } = readNetlist(
    netlist('CUST 0', 'P  NNAME1  /supply/battery.positive', record({ net: 'NNAME1', x: 1, y: 1 })),
  )
  expect(points[0]!.net).toBe('/supply/battery.positive')
})

test('reads signs and zeros that are left blank', () => {
  const line = record({ net: 'A', x: 12_345, y: 42 })
    .replace('X+012345', 'X  12345')
    .replace('Y+000042', 'Y    42 ')
  expect(readNetlist(netlist('CUST 1', line)).points[0]!.at).toEqual([12.345, 0.042])
})

test('counts what it passes over, and reads the first image only', () => {
  const { points, passed } = readNetlist(
    netlist(
      'CUST 0',
      'P  IMAGE PRIMARY',
      record({ net: 'A', x: 1, y: 1 }),
      '378A             L01 X0100Y0000 X+000001Y+000001 X+000100',
      '378A             L01 X0100Y0000 X+000001Y+000001 X+000200',
      '379A             B',
      '389BOARD_EDGE      X+000000Y+000000 X+100000',
      'P  IMAGE 2',
      record({ net: 'A', x: 1, y: 1 }),
    ),
  )
  expect(points.length).toBe(1)
  expect(passed.map(({ what, times, line }) => [what, times, line])).toEqual([
    ['conductor', 2, 5],
    ['neighbouring net', 1, 7],
    ['outline', 1, 8],
    ['further image', 1, 10],
  ])
})

test.each([
  ['a file that breaks off', record({ x: 1, y: 1 }), 1, /breaks off/],
  ['an unknown unit', netlist('CUST 7', record({ x: 1, y: 1 })), 2, /CUST 7/],
  ['a place without Y', netlist('CUST 0', record({ x: 1, y: 1 }).replace('Y+000001', '')), 3, /column 42/],
  [
    'a place that is no number',
    netlist('CUST 0', record({ x: 1, y: 1 }).replace('+000001Y', '+0A0001Y')),
    3,
    /column 42/,
  ],
  ['a hole without a size', netlist('CUST 0', record({ hole: 0, x: 1, y: 1 })), 3, /no size/],
  [
    'an access that is no layer',
    netlist('CUST 0', record({ x: 1, y: 1 }).replace('A00', 'AXX')),
    3,
    /no layer/,
  ],
  ['a line of something else', netlist('CUST 0', record({ x: 1, y: 1 }), 'Dear board maker'), 4, /no record/],
  ['a unit that changes', netlist('CUST 0', record({ x: 1, y: 1 }), 'P  UNITS SI'), 4, /changes/],
])('refuses %s', (_, text, line, reason) => {
  const refusal = (): Unreadable => {
    try {
      readNetlist(text)
    } catch (error) {
      if (error instanceof Unreadable) return error
    }
    throw new Error('It was read.')
  }
  expect(refusal().line).toBe(line)
  expect(refusal().reason).toMatch(reason)
})

test('knows a netlist by what it holds', () => {
  expect(isNetlist(netlist('CUST 0', record({ x: 1, y: 1 })))).toBe(true)
  expect(isNetlist('M48\nMETRIC,TZ\nT1C0.9\n%\nT1\nX1Y1\nM30')).toBe(false)
  expect(isNetlist('317 boxes were sent')).toBe(false)
})
