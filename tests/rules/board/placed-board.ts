import type { DrawnBoard, Place } from './drawn-board'

/** A board whose components are where anybody can work out: two on the top, two on the bottom, a connector, a probe's land and a hole. */
const LANDS = {
  R1: { on: 'top', at: [[8, 10], [10, 10]] },
  R2: { on: 'top', at: [[8, 16], [10, 16]] },
  C1: { on: 'bottom', at: [[20, 8], [20, 11]] },
  C2: { on: 'bottom', at: [[26, 8], [26, 11]] },
  C3: { on: 'bottom', at: [[32, 8], [32, 11]] },
} as const // prettier-ignore
const X1: readonly Place[] = [
  [20, 22],
  [22.54, 22],
  [25.08, 22],
]
const HELD: Place = [36, 26]

export const PLACED_BOARD: DrawnBoard = {
  lands: [
    ...Object.entries(LANDS).flatMap(([component, { on, at }]) =>
      at.map((place, pin) => ({
        on: [on] as const,
        at: place,
        size: 1.2,
        bare: true,
        pin: [component, String(pin + 1)] as const,
      })),
    ),
    ...X1.map((at, pin) => ({
      on: ['top', 'bottom'] as const,
      at,
      size: 1.9,
      bare: true,
      pin: ['X1', String(pin + 1)] as const,
    })),
    { on: ['top'], at: [5, 25], size: 1.5, bare: true, pin: ['TP1', '1'], use: 'TestPad' },
    { on: ['top', 'bottom'], at: HELD, size: 6, bare: true, pin: ['H1', '1'] },
  ],
  lines: [],
  holes: [...X1.map((at) => ({ at, mm: 1.1, plated: true })), { at: HELD, mm: 3.2, plated: true }],
  outline: [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
  ],
}

export interface PlacedAt {
  readonly at: Place
  readonly side: 'top' | 'bottom'
  readonly turned?: number
}
/** The middles of their pins, worked out by hand. */
export const CENTRES: Readonly<Record<string, PlacedAt>> = {
  R1: { at: [9, 10], side: 'top' },
  R2: { at: [9, 16], side: 'top', turned: 180 },
  C1: { at: [20, 9.5], side: 'bottom', turned: 90 },
  C2: { at: [26, 9.5], side: 'bottom', turned: 90 },
  C3: { at: [32, 9.5], side: 'bottom', turned: 90 },
  X1: { at: [22.54, 22], side: 'top' },
}

const MM = { mm: 1, mil: 0.0254, inch: 25.4 } as const

interface Written {
  readonly unit?: keyof typeof MM
  readonly heading?: string
  /** Where a centre is written to lie. */
  readonly place?: (at: Place, side: 'top' | 'bottom') => Place
}

/** The centres as a placement file. */
export function placementText(
  centres: Readonly<Record<string, PlacedAt>> = CENTRES,
  { unit = 'mm', heading = 'Ref,Mid X,Mid Y,Rotation,Side', place = (at) => at }: Written = {},
): string {
  const rows = Object.entries(centres).map(([reference, { at, side, turned = 0 }]) => {
    const [x, y] = place(at, side).map((mm) => (mm / MM[unit]).toFixed(6))
    return [reference, x, y, turned, side].join(',')
  })
  return [heading, ...rows, ''].join('\n')
}
