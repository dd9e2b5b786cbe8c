import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boardOf } from '@/shared/board/board'
import { boardFindings } from '@/shared/board/judged/board-findings'
import { netsToWatch } from '@/shared/board/judged/spacing-asked'
import { layersFrom } from '@/shared/board/read-files'
import { conductorMethod, conductors } from '@/shared/plan/parameters/conductors'
import { copperFoil, serviceTemperature } from '@/shared/plan/parameters/laminate'
import { netClasses, type NetClass } from '@/shared/plan/parameters/net-classes'
import { spacings, spacingEdition } from '@/shared/plan/parameters/spacings'
import { factsWith, set, type SetValue } from '../facts-builder'
import { spacing } from '../specification/spacing-rows'
import { filesOf, type DrawnBoard } from './drawn-board'

const row = (nets: string, more: Partial<NetClass> = {}): NetClass => ({
  nets,
  voltageV: undefined,
  alternates: undefined,
  currentA: undefined,
  dropMostMv: undefined,
  ...more,
})

/** A supply line of 30 mm and 0.5 mm, a mains line 2 mm below it and a ground line 1 mm above. */
const DRAWN: DrawnBoard = {
  lands: [
    { on: ['top', 'bottom'], at: [10, 20], size: 1, bare: true, net: 'VIN', pin: ['X1', '1'] },
    { on: ['top', 'bottom'], at: [40, 20], size: 1, bare: true, net: 'VIN', pin: ['X2', '1'] },
    { on: ['top'], at: [10, 17.5], size: 0.5, net: 'L' },
    { on: ['top'], at: [10, 21.5], size: 0.5, net: 'GND' },
  ],
  lines: [
    { on: 'top', from: [10, 20], to: [40, 20], width: 0.5 },
    { on: 'top', from: [10, 17.5], to: [40, 17.5], width: 0.5 },
    { on: 'top', from: [10, 21.5], to: [40, 21.5], width: 0.5 },
  ],
  holes: [
    { at: [10, 20], mm: 0.6, plated: true },
    { at: [40, 20], mm: 0.6, plated: true },
  ],
  outline: [
    [0, 0],
    [50, 0],
    [50, 40],
    [0, 40],
  ],
}
const files = filesOf(DRAWN)
const BASE: readonly SetValue[] = [
  set(copperFoil, '35'),
  set(conductorMethod, 'ipc-2221'),
  set(serviceTemperature, 60),
  set(spacings, [spacing({ category: 'B2', gapMm: 0.2 })]),
  set(spacingEdition, 'ipc-2221'),
]
function finding(key: string, values: readonly SetValue[], drawn = files) {
  const facts = factsWith({ values: [...BASE, ...values] })
  const board = boardOf(
    layersFrom(drawn, (file) => ('proposed' in file ? file.proposed.role : { kind: 'other' })),
    netsToWatch(facts),
  )
  return boardFindings(board, facts).find((each) => each.key === key)!
}
const classes = (...rows: NetClass[]) => set(netClasses, rows)

describe('conductors for their current', () => {
  // Nothing is plated on, so that processing leaves 24.9 µm (IPC-6012 as its table in the project has it). By hand from
  // I = 0.048 · ΔT^0.44 · A^0.725, in mils: A = (0.5/0.0254) · (24.9/25.4) = 19.298; A^0.725 = 8.5504;
  // 1.5 A: ΔT = (1.5/(0.048 · 8.5504))^(1/0.44) = 3.6548^2.2727 = 19.02 K.
  test('take the narrowest line of the net and the copper that its layer has', () => {
    const found = finding('conductors-on-board', [classes(row('VIN', { currentA: 1.5 }))])
    expect(found.places).toMatchObject([{ subject: 'VIN, top', verdict: 'fails', layer: 'top' }])
    expect(found.places[0]!.margin).toMatchObject({ limit: 10, unit: 'K' })
    expect(found.places[0]!.margin!.found).toBeCloseTo(19.02, 1)
    expect(found.places[0]!.at[1]).toBeCloseTo(20, 6)
  })
  test('say how wide would do: at 9 K, A = (1.5/(0.048 · 9^0.44))^(1/0.725) = 30.4 mil², 0.79 mm, so 0.8 mm', () => {
    const found = finding('conductors-on-board', [classes(row('VIN', { currentA: 1.5 }))])
    expect(found.places[0]!.remedy!.message).toContain('0.8 mm')
  })
  test('take the current of the table of conductors too, and the greater of both', () => {
    const listed = set(conductors, [
      {
        net: 'VIN',
        layer: 'external',
        widthMm: 1,
        copperUm: 35,
        currentA: 1.5,
        lengthMm: 30,
        dropMostMv: undefined,
      },
    ])
    const found = finding('conductors-on-board', [listed, classes(row('V*', { currentA: 0.2 }))])
    expect(found.places[0]!.margin!.found).toBeCloseTo(19.02, 1)
  })
  test('are undetermined where no net of the files is called so, and where nothing is stated', () => {
    const misnamed = finding('conductors-on-board', [classes(row('VCC', { currentA: 1 }))])
    expect(misnamed.finding).toMatchObject({ verdict: 'undetermined' })
    expect(misnamed.finding.parts).toMatchObject([{ subject: 'VCC', verdict: 'undetermined' }])
    expect(finding('conductors-on-board', []).finding.missing).toEqual([netClasses.label])
  })
})

describe('resistance along the copper', () => {
  // 30 mm of 0.5 mm are 60 squares. At 60 °C and the rise of 0.5 A, (0.5/(0.048 · 8.5504))^2.2727 = 1.566 K:
  // 1.724e-8/24.9e-6 · 60 · (1 + 0.00393 · 41.566) = 48.33 mΩ, and 24.2 mV at 0.5 A.
  const at = (dropMostMv: number | undefined) =>
    finding('drops-on-board', [classes(row('VIN', { currentA: 0.5, dropMostMv }))])
  test('is that of its squares, warm', () => {
    expect(at(20).places[0]).toMatchObject({ subject: 'VIN', verdict: 'fails', layer: 'top' })
    expect(at(20).places[0]!.margin!.found).toBeCloseTo(24.17, 1)
  })
  test('keeps a fifth of the drop free', () => {
    expect(at(40).finding.verdict).toBe('meets')
    expect(at(28).finding.verdict).toBe('marginal')
  })
  test('is told where no drop is named', () => {
    expect(at(undefined).finding.verdict).toBe('not applicable')
    expect(at(undefined).places[0]!.found).toContain('48.3 mΩ')
  })
})

describe('gaps for voltage', () => {
  // From VIN's lands of 1 mm: to L 2.5 − 0.5 − 0.25 = 1.75, to GND 1.5 − 0.5 − 0.25 = 0.75; from L to GND, past VIN, 4 − 0.5.
  // IPC-2221B, Table 6-1, B2: 0.6 up to 150 V, 2.5 up to 500 V; 24 V asks 0.1.
  const stated = [
    row('L', { voltageV: 325, alternates: true }),
    row('VIN', { voltageV: 24 }),
    row('GND', { voltageV: 0 }),
  ]
  test('are looked for as far as the voltage asks, and judged pair by pair', () => {
    const { places, finding: judged } = finding('voltages-on-board', [classes(...stated)])
    const told = places.map(({ subject, verdict, margin }) => [
      subject.replace(', top', '').split(' to ').sort().join(' '),
      verdict,
      Number(margin!.found.toFixed(6)),
      margin!.limit,
    ])
    expect(told).toEqual([
      ['L VIN', 'fails', 1.75, 2.5],
      ['GND L', 'meets', 3.5, 2.5],
      ['GND VIN', 'meets', 0.75, 0.1],
    ])
    expect(judged.verdict).toBe('fails')
    expect(places[0]!.ends!.map(([, y]) => y).sort()).toEqual([
      expect.closeTo(17.75, 6),
      expect.closeTo(19.5, 6),
    ])
  })
  test('are undetermined without a kind of spacing, and without a voltage', () => {
    const none = set(spacings, [spacing({ category: 'B1' })])
    expect(finding('voltages-on-board', [none, classes(...stated)]).finding.verdict).toBe('undetermined')
    expect(finding('voltages-on-board', []).finding.missing).toEqual([netClasses.label])
  })
  test('law: a higher voltage never turns a gap that fails into one that meets', () => {
    const order = ['meets', 'marginal', 'undetermined', 'fails']
    const verdictAt = (volts: number) =>
      order.indexOf(
        finding('voltages-on-board', [
          classes(row('VIN', { voltageV: volts }), row('L, GND', { voltageV: 0 })),
        ]).finding.verdict,
      )
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1500 }), fc.integer({ min: 0, max: 1500 }), (one, other) => {
        expect(verdictAt(Math.max(one, other))).toBeGreaterThanOrEqual(verdictAt(Math.min(one, other)))
      }),
      { numRuns: 40 },
    )
  })
})

test('law: a wider line never runs hotter', () => {
  const riseOf = (width: number) =>
    finding(
      'conductors-on-board',
      [classes(row('VIN', { currentA: 1 }))],
      filesOf({ ...DRAWN, lines: [{ on: 'top', from: [10, 20], to: [40, 20], width }] }),
    ).places[0]!.margin!.found
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 90 }), fc.integer({ min: 10, max: 90 }), (one, other) => {
      expect(riseOf(Math.max(one, other) / 100)).toBeLessThanOrEqual(riseOf(Math.min(one, other) / 100))
    }),
    { numRuns: 25 },
  )
})
