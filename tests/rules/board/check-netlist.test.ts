import { expect, test } from 'vitest'
import type { NetlistCheck } from '@/shared/board/netlist/check-netlist'
import { boardFrom, type DrawnBoard } from './drawn-board'
import { netlist, record } from './netlist-text'

/**
 * Two parts of two pins each, pin 1 joined to pin 1 on the top; a surface land beside them, and a tooling hole.
 * What is to be found follows from the drawing by hand.
 */
const PINS = { 'J1 1': [10, 10], 'J1 2': [12.54, 10], 'J2 1': [10, 20], 'J2 2': [12.54, 20] } as const
const DRAWN: DrawnBoard = {
  lands: [
    ...Object.values(PINS).map((at) => ({ on: ['top', 'bottom'] as const, at, size: 1.6, bare: true })),
    { on: ['top'], at: [20, 10], size: [1, 2], bare: true },
  ],
  lines: [
    { on: 'top', from: [10, 10], to: [10, 20], width: 0.3 },
    { on: 'top', from: [12.54, 10], to: [20, 10], width: 0.3 },
  ],
  holes: [
    ...Object.values(PINS).map((at) => ({ at, mm: 0.9, plated: true })),
    { at: [30, 5], mm: 3.2, plated: false },
  ],
  outline: [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
  ],
}
const um = (mm: number): number => Math.round(mm * 1000)
const pin = (
  name: keyof typeof PINS,
  net: string,
  more: { mm?: number; plated?: boolean; dx?: number } = {},
) => {
  const [component, number] = name.split(' ')
  const [x, y] = PINS[name]
  const { mm = 0.9, plated = true, dx = 0 } = more
  return record({ net, component: component!, pin: number!, hole: um(mm), plated, x: um(x + dx), y: um(y) })
}
const SOUND = [
  pin('J1 1', 'SUPPLY'),
  pin('J1 2', 'RETURN'),
  pin('J2 1', 'SUPPLY'),
  pin('J2 2', 'SENSE'),
  record({ code: '327', net: 'RETURN', component: 'C1', pin: '1', layer: 1, x: 20_000, y: 10_000 }),
  record({ code: '367', hole: 3200, plated: false, x: 30_000, y: 5_000 }),
]
const checked = (...records: string[]): NetlistCheck =>
  boardFrom({ ...DRAWN, netlist: netlist('CUST 1', ...records) }).netlist!
const withRecord = (at: number, line: string): string[] =>
  SOUND.map((each, index) => (index === at ? line : each))

test('a netlist that agrees leaves nothing to be said, and names the copper and the pins', () => {
  expect(checked(...SOUND)).toEqual({
    nets: 3,
    places: 6,
    met: 6,
    liesOn: true,
    shift: undefined,
    differences: [],
  })
  const { holes, netlist: none } = boardFrom({ ...DRAWN, netlist: netlist('CUST 1', ...SOUND) })
  expect(none).toBeDefined()
  expect(holes.map(({ net, component, pin: number }) => [net, component, number])).toEqual([
    ['SUPPLY', 'J1', '1'],
    ['RETURN', 'J1', '2'],
    ['SUPPLY', 'J2', '1'],
    ['SENSE', 'J2', '2'],
    [undefined, undefined, undefined],
  ])
  expect(holes.map(({ kind, kindBy }) => `${kind} by ${kindBy}`)).toEqual([
    ...Array.from({ length: 4 }, () => 'component by netlist'),
    'mounting by plating',
  ])
})

test.each([
  [
    'a net whose copper is in two pieces',
    withRecord(3, pin('J2 2', 'RETURN')),
    [{ kind: 'open', net: 'RETURN', pieces: 2, at: [expect.closeTo(12.54, 6), 20] }],
  ],
  [
    'two nets on one piece of copper',
    withRecord(2, pin('J2 1', 'OTHER')),
    [{ kind: 'joined', nets: ['SUPPLY', 'OTHER'], at: [10, 20] }],
  ],
  [
    'a hole that is not drilled',
    [
      ...SOUND,
      record({ net: 'N/C', component: 'J3', pin: '1', hole: 900, plated: true, x: 25_000, y: 25_000 }),
    ],
    [{ kind: 'no hole', pin: 'J3 pin 1', at: [25, 25] }],
  ],
  [
    'a land without copper: on the other side there is none',
    withRecord(
      4,
      record({ code: '327', net: 'RETURN', component: 'C1', pin: '1', layer: 2, x: 20_000, y: 10_000 }),
    ),
    [{ kind: 'no copper', net: 'RETURN', pin: 'C1 pin 1', layer: 'bottom' }],
  ],
  [
    'a hole of another size',
    withRecord(0, pin('J1 1', 'SUPPLY', { mm: 1.1 })),
    [{ kind: 'size', listedMm: 1.1, drilledMm: 0.9 }],
  ],
  [
    'a hole that is plated in one file only',
    withRecord(0, pin('J1 1', 'SUPPLY', { plated: false })),
    [{ kind: 'plating', listedPlated: false }],
  ],
  [
    'a hole that the netlist leaves out',
    SOUND.filter((_, at) => at !== 3),
    [{ kind: 'not listed', diameterMm: 0.9, at: [12.54, 20] }],
  ],
])('finds %s', (_, records, differences) => {
  expect(checked(...records).differences).toMatchObject(differences)
  expect(checked(...records).differences.length).toBe(differences.length)
})

test('a netlist that lies elsewhere is told by how much, and nothing of it is used', () => {
  const elsewhere = SOUND.map((line) =>
    line.replace(/X\+(\d{6})/, (__, x: string) => `X+${String(Number(x) + 3700).padStart(6, '0')}`),
  )
  const found = checked(...elsewhere)
  expect(found).toMatchObject({ met: 0, liesOn: false, differences: [] })
  expect(found.shift!.map((mm) => Math.round(mm * 1e6) / 1e6)).toEqual([-3.7, 0])
  const { holes } = boardFrom({ ...DRAWN, netlist: netlist('CUST 1', ...elsewhere) })
  expect(holes.every(({ component }) => component === undefined)).toBe(true)
})

test('a netlist without holes tells no shift', () => {
  expect(checked(record({ code: '327', net: 'A', layer: 1, x: 1, y: 1 }))).toMatchObject({
    liesOn: false,
    shift: undefined,
  })
})
