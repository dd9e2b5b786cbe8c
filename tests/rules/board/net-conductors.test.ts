import { describe, expect, test } from 'vitest'
import { namesNet, netLoad, voltageBetween } from '@/shared/board/net-loads'
import { boardFrom, type DrawnBoard } from './drawn-board'

/**
 * A supply of three widths between two terminals, with an inner stretch, a neck inside its land and a wide line over
 * part of a narrow one. Squares are worked out by hand: length over width.
 */
const SUPPLY: DrawnBoard = {
  lands: [
    { on: ['top', 'inner 2', 'bottom'], at: [10, 10], size: 2, bare: true, net: 'VIN', pin: ['X1', '1'] },
    { on: ['top', 'inner 2', 'bottom'], at: [40, 10], size: 2, net: 'VIN' },
    { on: ['top', 'bottom'], at: [40, 30], size: 2, bare: true, net: 'VIN', pin: ['X2', '1'] },
    { on: ['inner 2'], at: [40, 30], size: 2 },
  ],
  lines: [
    // 10 mm of 1 mm, then 20 mm of 0.5 mm: 10 + 40 squares on the top.
    { on: 'top', from: [10, 10], to: [20, 10], width: 1 },
    { on: 'top', from: [20, 10], to: [40, 10], width: 0.5 },
    // 20 mm of 0.4 mm inside: 50 squares.
    { on: 'inner 2', from: [40, 10], to: [40, 30], width: 0.4 },
    // A neck of 0.2 mm that lies wholly inside the line of 1 mm, and a way that leads nowhere.
    { on: 'top', from: [12, 10], to: [18, 10], width: 0.2 },
    { on: 'top', from: [30, 10], to: [30, 20], width: 0.8 },
  ],
  holes: [
    { at: [10, 10], mm: 1, plated: true },
    { at: [40, 10], mm: 0.6, plated: true },
    { at: [40, 30], mm: 1, plated: true },
  ],
  outline: [
    [0, 0],
    [50, 0],
    [50, 40],
    [0, 40],
  ],
}
const board = boardFrom(SUPPLY)
const path = (drawn: DrawnBoard) => boardFrom(drawn).netPaths.find(({ net }) => net === 'VIN')!

describe('the narrowest conductor of a net', () => {
  const found = Object.fromEntries(
    board.netConductors.map((each) => [`${each.net} ${each.layer}`, each] as const),
  )
  test('is found on every layer; what lies inside wider copper is none', () => {
    expect(found['VIN top']).toMatchObject({ widthMm: 0.5 })
    expect(found['VIN inner 2']).toMatchObject({ widthMm: 0.4 })
    expect(found['VIN bottom']).toBeUndefined()
  })
  test('is told with how long it is so, up to steps of half its width', () => {
    // From the end of the line of 1 mm (20.5) to the land (39), but for the line of 0.8 that meets it (0.8 wide).
    expect(found['VIN top']!.lengthMm).toBeGreaterThan(39 - 20.5 - 0.8 - 0.75)
    expect(found['VIN top']!.lengthMm).toBeLessThan(39 - 20.5 - 0.8 + 0.75)
  })
  test('leads to the middle of the longest stretch, with both of its edges', () => {
    const { at, ends } = found['VIN inner 2']!
    expect(at[0]).toBeCloseTo(40, 6)
    expect(at[1]).toBeCloseTo(20, 0)
    expect(ends.map(([x]) => x).sort()).toEqual([expect.closeTo(39.8, 6), expect.closeTo(40.2, 6)])
  })
  test('is no neck that is shorter than it is wide', () => {
    const necked: DrawnBoard = {
      ...SUPPLY,
      lines: [
        { on: 'top', from: [10, 10], to: [25, 10], width: 1 },
        { on: 'top', from: [25, 10], to: [26.3, 10], width: 0.35 },
        { on: 'top', from: [26.3, 10], to: [40, 10], width: 1 },
      ],
    }
    // Between the round ends of the wide lines 0.3 mm are left.
    expect(boardFrom(necked).netConductors.find(({ layer }) => layer === 'top')!.widthMm).toBe(1)
  })
  test('is no edge of a plane that is drawn along it', () => {
    const filled: DrawnBoard = {
      ...SUPPLY,
      lines: [0, 1, 2, 3].map((row) => ({
        on: 'top',
        from: [10, 10 + 0.15 * row],
        to: [40, 10 + 0.15 * row],
        width: 0.2,
      })),
    }
    expect(boardFrom(filled).netConductors.filter(({ layer }) => layer === 'top')).toEqual([])
  })
})

describe('the way along the copper', () => {
  test('adds up squares of every width, by inner and outer layers, to the middle of round lands', () => {
    expect(path(SUPPLY).squares.external).toBeCloseTo(10 / 1 + 20 / 0.5, 6)
    expect(path(SUPPLY).squares.internal).toBeCloseTo(20 / 0.4, 6)
    expect(path(SUPPLY)).toMatchObject({ from: 'X1 pin 1', to: 'X2 pin 1', overPlane: false })
    expect(path(SUPPLY).lengthMm).toBeCloseTo(50, 6)
  })
  test('is the shortest of several', () => {
    // 30 mm of 1 mm on the bottom beside the 50 squares of the top.
    const shorter: DrawnBoard = {
      ...SUPPLY,
      lines: [...SUPPLY.lines, { on: 'bottom', from: [10, 10], to: [40, 10], width: 1 }],
    }
    expect(path(shorter).squares.external).toBeCloseTo(30, 6)
  })
  test('begins where a line meets another between its ends', () => {
    // To X3 off the line of 0.5 mm at x = 30: 10 + 20 squares, then 10 mm of 0.8 mm.
    const branch: DrawnBoard = {
      ...SUPPLY,
      lands: [
        SUPPLY.lands[0]!,
        { on: ['top'], at: [30, 20], size: 2, bare: true, net: 'VIN', pin: ['X3', '1'] },
      ],
      holes: [SUPPLY.holes[0]!, { at: [30, 20], mm: 1, plated: true }],
    }
    expect(path(branch).squares.external).toBeCloseTo(10 + 20 + 12.5, 6)
  })
  test('is none between pins that are not joined', () => {
    expect(boardFrom({ ...SUPPLY, lines: [] }).netPaths).toEqual([])
  })
})

describe('nets are named', () => {
  test.each([
    ['24V', '24V', true],
    ['24v', '24V', true],
    ['24V', '24V_SENSE', false],
    ['24V*', '24V_SENSE', true],
    ['*GND', 'AGND', true],
    ['*GND', 'GND_A', false],
    ['N*-*E', 'Net-(R1-Pad1)E', true],
    ['A*A', 'A', false],
    ['X, GND ,Y', 'gnd', true],
    ['', 'GND', false],
    ['*', 'anything', true],
  ])('%s names %s: %s', (names, net, named) => expect(namesNet(names, net)).toBe(named))
  test('no pattern takes long', () => {
    const begun = performance.now()
    expect(namesNet(`${'*a'.repeat(99)}*b`, 'a'.repeat(10_000))).toBe(false)
    // Trying every way of matching would take longer than there is time.
    expect(performance.now() - begun).toBeLessThan(5_000)
  })
})

describe('what a net carries', () => {
  const row = (nets: string, more: object) => ({
    nets,
    voltageV: undefined,
    alternates: undefined,
    currentA: undefined,
    dropMostMv: undefined,
    ...more,
  })
  const classes = [
    row('L', { voltageV: 325, alternates: true }),
    row('N, PE', { voltageV: 0 }),
    row('-12V', { voltageV: -12, currentA: 1 }),
    row('-*', { currentA: 2, dropMostMv: 50 }),
  ]
  const span = (net: string) => netLoad(net, classes).voltage!
  test('is the worst of every row that names it', () => {
    expect(netLoad('-12V', classes)).toEqual({
      voltage: { leastV: -12, mostV: -12 },
      currentA: 2,
      dropMostMv: 50,
    })
    expect(netLoad('SIG', classes)).toEqual({
      voltage: undefined,
      currentA: undefined,
      dropMostMv: undefined,
    })
  })
  test('an alternating voltage swings to both sides: 325 − (−12) = 337 V', () => {
    expect(voltageBetween(span('L'), span('-12V'))).toBe(337)
    expect(voltageBetween(span('N'), span('-12V'))).toBe(12)
    expect(voltageBetween(span('N'), span('PE'))).toBe(0)
  })
})
