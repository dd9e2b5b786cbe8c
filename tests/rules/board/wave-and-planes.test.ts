import { describe, expect, test } from 'vitest'
import { maskWebMin, reliefShareMax } from '@/shared/plan/limits/board-files'
import { gridShareMin } from '@/shared/plan/limits/lead-holes'
import { boardLength, boardWidth } from '@/shared/plan/parameters/assessment-inspection'
import { copperFoil } from '@/shared/plan/parameters/laminate'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { PlacedPart } from '@/shared/board/judged/placed-part'
import { requirement, set, type FactsInput, type SetValue } from '../facts-builder'
import { boardFrom, type DrawnBoard, type Place } from './drawn-board'
import { judged } from './judged-board'

const OUTER = ['top', 'bottom'] as const
const EMPTY: DrawnBoard = {
  lands: [],
  lines: [],
  holes: [],
  outline: [
    [0, 0],
    [60, 0],
    [60, 40],
    [0, 40],
  ],
}
type Land = DrawnBoard['lands'][number]
/** Lands with a hole of 0.9 mm each, as pins of one connector. */
const pins = (places: readonly Place[], size: Land['size'], more: Partial<Land> = {}): DrawnBoard => ({
  ...EMPTY,
  lands: places.map((at, n) => ({
    on: OUTER,
    at,
    size,
    bare: true,
    net: `N${n + 1}`,
    pin: ['X1', String(n + 1)] as const,
    ...more,
  })),
  holes: places.map((at) => ({ at, mm: 0.9, plated: true })),
})
const of = (key: string, drawn: DrawnBoard, values: readonly SetValue[] = [], more: FactsInput = {}) =>
  judged(boardFrom(drawn), values, more).get(key)!
const foundOf = ({ places }: { places: readonly PlacedPart[] }) =>
  places.map(({ verdict, margin }) => [verdict, margin && Number(margin.found.toFixed(6))])

describe('webs of solder mask', () => {
  const webs = (drawn: DrawnBoard, more: FactsInput = {}) => of('mask-webs-on-board', drawn, [], more)
  // Openings are drawn 0.1 mm larger than lands. Discs: 2.3 − 2.0; squares side by side: 2.15 − 2.0; a square's corner
  // from a disc: √(0.9² + 0.9²) − 0.8, by Pythagoras.
  test.each([
    [
      'two discs',
      [
        [10, 10],
        [12.3, 10],
      ],
      1.9,
      0.3,
    ],
    [
      'two squares',
      [
        [10, 10],
        [12.15, 10],
      ],
      [1.9, 1.9],
      0.15,
    ],
    [
      'two discs that stand obliquely',
      [
        [10, 10],
        [11.5, 12],
      ],
      1.9,
      0.5,
    ],
  ] as const)('of %s are measured from edge to edge, on both sides', (_, places, size, widthMm) => {
    expect(foundOf(webs(pins(places, size)))).toEqual(OUTER.map(() => ['meets', expect.closeTo(widthMm, 6)]))
  })
  test('of a square’s corner and a disc', () => {
    const drawn = pins([[10, 10]], [1.5, 1.5])
    const disc = { on: OUTER, at: [11.7, 11.7] as const, size: 1.5, bare: true }
    expect(foundOf(webs({ ...drawn, lands: [...drawn.lands, disc] }))[0]).toEqual([
      'meets',
      expect.closeTo(Math.hypot(0.9, 0.9) - 0.8, 3),
    ])
  })
  // Common practice, 0.1 mm, and a tenth of it kept free.
  test.each([
    [2.11, 'meets'],
    [2.1, 'marginal'],
    [2.099, 'fails'],
  ])('are judged to the boundary: openings of 2 mm, %d mm apart', (pitch, verdict) => {
    expect(
      webs(
        pins(
          [
            [10, 10],
            [10 + pitch, 10],
          ],
          1.9,
        ),
      ).finding.verdict,
    ).toBe(verdict)
  })
  test('are none where openings touch, and none between openings that are far apart', () => {
    expect(
      webs(
        pins(
          [
            [10, 10],
            [12, 10],
          ],
          1.9,
        ),
      ).finding,
    ).toMatchObject({ verdict: 'meets' })
    expect(
      webs(
        pins(
          [
            [10, 10],
            [12, 10],
          ],
          1.9,
        ),
      ).places,
    ).toEqual([])
    expect(
      webs(
        pins(
          [
            [10, 10],
            [12.6, 10],
          ],
          1.9,
        ),
      ).places,
    ).toEqual([])
  })
  test('are named by what their openings are over, and lie halfway', () => {
    expect(
      webs(
        pins(
          [
            [10, 10],
            [12.3, 10],
          ],
          1.9,
        ),
      ).places[0],
    ).toMatchObject({
      subject: 'N1 to N2, top',
      at: [expect.closeTo(11.15, 6), expect.closeTo(10, 6)],
    })
  })
  test('are judged by the limit that the programme states, undetermined beyond what is looked for', () => {
    const stated = (value: number) => ({ requirements: [requirement(maskWebMin, value)] })
    const drawn = pins(
      [
        [10, 10],
        [12.3, 10],
      ],
      1.9,
    )
    expect(webs(drawn, stated(0.31)).finding.verdict).toBe('fails')
    expect(
      webs(
        pins(
          [
            [10, 10],
            [20, 10],
          ],
          1.9,
        ),
        stated(0.6),
      ).finding.verdict,
    ).toBe('undetermined')
  })
  test('are no matter of a board without openings', () => {
    expect(webs({ ...EMPTY, holes: [{ at: [5, 5], mm: 3, plated: false }] }).finding.verdict).toBe(
      'not applicable',
    )
  })
})

describe('lands beside each other over the wave', () => {
  const wave = (drawn: DrawnBoard, values: readonly SetValue[] = []) => of('bridging-on-board', drawn, values)
  const row = (count: number, step: Place, size: Land['size']): DrawnBoard =>
    pins(
      Array.from({ length: count }, (_, n): Place => [20 + n * step[0], 8 + n * step[1]]),
      size,
    )
  const ALONG_X = [set(boardLength, 60), set(boardWidth, 40)]
  const ALONG_Y = [set(boardLength, 40), set(boardWidth, 60)]

  // Lands of 1 by 12 mm, 1.6 apart: 0.6 mm bare, less than twice 0.5, facing each other for 12 mm, over the 10 allowed.
  test('face each other for all of their length across the travel, and for none of it along', () => {
    const drawn = row(4, [1.6, 0], [1, 12])
    expect(foundOf(wave(drawn, ALONG_X))).toEqual([1, 2, 3].map(() => ['marginal', 12]))
    expect(foundOf(wave(drawn, ALONG_Y))).toEqual([1, 2, 3].map(() => ['meets', 0.6]))
  })
  test('lead to the travel on which fewest do, as data and in words', () => {
    const found = wave(row(4, [1.6, 0], [1, 12]), ALONG_X).finding
    expect(found.measured).toEqual({
      proposed: ['90°', '270°'],
      acrossAlongX: { value: 36, unit: 'mm' },
      acrossAlongY: { value: 0, unit: 'mm' },
    })
    expect(found.remedy?.message).toContain(
      '90° or 270°, its upper or lower edge first: 0 of 3 pairs, 0 mm in all',
    )
    expect(wave(row(4, [1.6, 0], [1, 12]), ALONG_Y).finding.remedy).toBeUndefined()
  })
  test('of a board turned by a quarter is the other travel', () => {
    expect(wave(row(4, [0, 1.6], [12, 1]), ALONG_Y).finding.measured).toMatchObject({
      proposed: ['0°', '180°'],
    })
  })
  // At 45°: 12 mm across the way from one to the other; the sine is √½ on either travel.
  test('of lands that stand obliquely are half and half', () => {
    const discs = row(2, [1.8, 1.8], 1.9)
    const found = wave(discs, ALONG_X)
    expect(found.places[0]!.measured).toMatchObject({
      acrossTravel: { value: Number((1.9 * Math.SQRT1_2).toFixed(3)) },
    })
    expect(found.finding.measured).toMatchObject({ proposed: ['0°', '90°', '180°', '270°'] })
  })
  // MIL-PRF-55110G's 0.020 in, 0.5 mm: 2.3 − 1.9 = 0.4.
  test('fail where they lie closer than bare copper may, whichever way the board travels', () => {
    expect(foundOf(wave(row(2, [2.3, 0], 1.9)))).toEqual([['fails', 0.4]])
  })
  test('are undetermined where the travel decides and is not told', () => {
    const drawn = row(2, [1.6, 0], [1, 12])
    expect(wave(drawn).finding.verdict).toBe('undetermined')
    expect(wave(drawn, [set(boardLength, 55)]).finding.verdict).toBe('undetermined')
    expect(wave(drawn).finding.remedy?.message).toContain('90° or 270°')
  })
  test('lie close below twice the least gap: at 1 mm no length matters', () => {
    expect(wave(row(2, [2, 0], [1, 12]), ALONG_X).places).toEqual([])
    expect(wave(row(2, [1.999, 0], [1, 12]), ALONG_X).places).toHaveLength(1)
  })
  test('are no matter where no wave is crossed', () => {
    expect(wave(row(2, [1.6, 0], [1, 12]), [set(solderingProcess, 'selective')]).finding.verdict).toBe(
      'not applicable',
    )
    expect(wave(row(2, [1.6, 0], [1, 12]), [set(solderingProcess, 'wave'), ...ALONG_X]).finding.verdict).toBe(
      'marginal',
    )
  })
})

describe('heat drawn off into planes', () => {
  // IPC-2222, thermal relief in conductor planes (its worked example): a least land of 1.35 mm may be joined by 0.81 mm
  // in all, by four webs of 0.20 mm, three of 0.27 or two of 0.40.
  const LAND = 1.35
  const AT: Place = [20, 20]
  /** A plane of 30 by 30 mm with a land in a clearance of 2 mm, joined by webs of a width at some angles. */
  const relieved = (
    widthMm: number,
    anglesDeg: readonly number[],
    layers: readonly ('top' | 'bottom')[] = ['top'],
  ) => {
    const drawn = pins([AT], LAND, { net: 'GND' })
    return {
      ...drawn,
      planes: layers.map((on) => ({
        on,
        points: [
          [5, 5],
          [35, 5],
          [35, 35],
          [5, 35],
        ] as const,
      })),
      clears: layers.map((on) => ({ on, at: AT, size: 2 })),
      lines: layers.flatMap((on) =>
        anglesDeg.map((deg) => ({
          on,
          from: AT,
          to: [
            AT[0] + 1.3 * Math.cos((deg * Math.PI) / 180),
            AT[1] + 1.3 * Math.sin((deg * Math.PI) / 180),
          ] as const,
          width: widthMm,
        })),
      ),
    } satisfies DrawnBoard
  }
  const heat = (
    drawn: DrawnBoard,
    values: readonly SetValue[] = [set(copperFoil, '35')],
    more: FactsInput = {},
  ) => of('relief-on-board', drawn, values, more)
  const joint = (drawn: DrawnBoard) => boardFrom(drawn).planeJoints[0]!

  test.each([
    [0.2, [0, 90, 180, 270]],
    [0.2, [45, 135, 225, 315]],
    [0.27, [10, 130, 250]],
    [0.4, [90, 270]],
  ])('webs of %d mm at %j are counted and measured straight across', (widthMm, angles) => {
    const { websMm, landMm, joinedMm } = joint(relieved(widthMm, angles))
    expect(websMm).toHaveLength(angles.length)
    for (const mm of websMm) expect(Math.abs(mm - widthMm)).toBeLessThan(0.001)
    expect(Math.abs(joinedMm - widthMm * angles.length)).toBeLessThan(0.003)
    expect(landMm).toBeCloseTo(LAND, 6)
  })
  test('the share of the way round is that of the angles under which the webs are seen', () => {
    // The farthest way within the clearance is 0.25 mm outside the land: asin(0.1/0.925) each way of each of four webs.
    const share = (4 * 2 * Math.asin(0.1 / (LAND / 2 + 0.25))) / (2 * Math.PI)
    expect(Math.abs(joint(relieved(0.2, [0, 90, 180, 270])).share - share)).toBeLessThan(0.001)
  })
  test('is judged by the share of the land: 4 · 0.2/1.35 = 59.3 %, and 4 · 0.15/1.35 = 44.4 %', () => {
    const [onLayer] = heat(relieved(0.2, [0, 90, 180, 270])).places
    expect(onLayer).toMatchObject({ subject: 'X1 pin 1, top', verdict: 'marginal' })
    expect(onLayer!.margin!.found).toBeCloseTo(59.3, 0)
    expect(heat(relieved(0.15, [0, 90, 180, 270])).finding.verdict).toBe('meets')
    expect(heat(relieved(0.21, [0, 90, 180, 270])).finding.verdict).toBe('fails')
  })
  test('a land that the plane surrounds whole fails, π times its diameter, and is named', () => {
    const solid = { ...relieved(0.2, []), clears: [] }
    const [worst] = heat(solid).places
    expect(worst).toMatchObject({ subject: 'X1 pin 1, top', verdict: 'fails', at: AT })
    expect(worst!.margin!.found).toBeCloseTo(100 * Math.PI, 0)
    // 54 % of 1.35 by four: 0.18.
    expect(worst!.remedy!.message).toBe('Join it by 4 webs of at most 0.18 mm.')
  })
  test('webs of all layers together count as of 35 µm copper', () => {
    // Two layers of four webs of 0.2: 1.6 mm; of 70 µm copper as much as 3.2, of 105 as 4.8.
    const both = relieved(0.2, [0, 90, 180, 270], ['top', 'bottom'])
    const inAll = (foil: '35' | '70') =>
      heat(both, [set(copperFoil, foil)]).finding.parts!.find(({ subject }) => subject.endsWith('2 layers'))!
    expect(inAll('35').margin!.found).toBeCloseTo(1.6, 2)
    expect(inAll('70').margin!.found).toBeCloseTo(3.2, 2)
    expect(heat(both, []).finding.verdict).toBe('undetermined')
  })
  test('a conductor from a plane is a web, one that leads to no large copper is none', () => {
    const clear = relieved(0.2, [])
    expect(boardFrom(clear).planeJoints).toEqual([])
    expect(joint(relieved(0.5, [30])).websMm).toHaveLength(1)
    // A plane of 20 by 20 mm is below 507 mm², a disc of an inch.
    const small = {
      ...relieved(0.2, [0]),
      planes: [
        {
          on: 'top' as const,
          points: [
            [10, 10],
            [30, 10],
            [30, 30],
            [10, 30],
          ] as const,
        },
      ],
    }
    expect(boardFrom(small).planeJoints).toEqual([])
  })
  test('is judged by the share that the programme states', () => {
    const stated = { requirements: [requirement(reliefShareMax, 40)] }
    expect(heat(relieved(0.15, [0, 90, 180, 270]), [set(copperFoil, '35')], stated).finding.verdict).toBe(
      'fails',
    )
  })
})

describe('holes on a grid', () => {
  const grid = (drawn: DrawnBoard, least?: number) =>
    of(
      'grid-on-board',
      drawn,
      [],
      least === undefined ? {} : { requirements: [requirement(gridShareMin, least, { relaxes: true })] },
    )
  /** Nine on 2.54 mm wherever it begins, and one that is not. */
  const nine = Array.from({ length: 9 }, (_, n): Place => [
    3.3 + 2.54 * (n % 3),
    4.7 + 2.54 * Math.floor(n / 3),
  ])
  test('are counted on the grid that meets most of them, wherever it begins', () => {
    const { finding, places } = grid(pins([...nine, [20, 20]], 1.6), 85)
    expect(finding.margin).toMatchObject({ found: 90, limit: 85 })
    expect(places.map(({ subject }) => subject)).toEqual(['X1 pin 10'])
  })
  test('a hole within 20 µm is on it, one beyond is not', () => {
    const [first, ...others] = nine
    const moved = (mm: number) =>
      grid(pins([[first![0] + mm, first![1]], ...others], 1.6), 50).finding.margin!.found
    expect(moved(0.019)).toBe(100)
    expect(moved(0.021)).toBeCloseTo(800 / 9, 6)
  })
  test('are no matter where the programme asks for none; their share is told', () => {
    expect(grid(pins(nine, 1.6)).finding).toMatchObject({
      verdict: 'not applicable',
      found: expect.stringContaining('100 % on 2.54 mm'),
    })
  })
})

describe('fiducials and test points', () => {
  const marks = (lands: DrawnBoard['lands'], more: Partial<DrawnBoard> = {}) =>
    boardFrom({ ...pins([[30, 30]], 1.6), ...more, lands: [...pins([[30, 30]], 1.6).lands, ...lands] }).marks
  const flash = (at: Place, more: Partial<Land> = {}): Land => ({
    on: ['top'],
    at,
    size: 1.5,
    bare: true,
    ...more,
  })
  test('are what their apertures are for, whatever they are called', () => {
    expect(
      marks([
        flash([5, 5], { use: 'FiducialPad,Global', bare: false }),
        flash([9, 5], { use: 'TestPad', net: 'SENSE', pin: ['FID9', '1'] }),
      ]),
    ).toMatchObject([
      { kind: 'fiducial', by: 'attribute', at: [5, 5], sizeMm: 1.5, side: 'top' },
      { kind: 'test point', by: 'attribute', net: 'SENSE', name: 'FID9' },
    ])
  })
  test('else what they are called', () => {
    expect(
      marks([flash([5, 5], { pin: ['TP3', '1'], net: 'OUT' }), flash([9, 5], { pin: ['T3', '1'] })]),
    ).toMatchObject([
      { kind: 'test point', by: 'name', name: 'TP3', net: 'OUT' },
      // Alone, bare and round: by its shape.
      { kind: 'fiducial', by: 'shape', name: 'T3' },
    ])
  })
  test('else fiducials are round, bare, without a hole and joined to nothing', () => {
    const joined = { lines: [{ on: 'top' as const, from: [5, 5] as const, to: [9, 9] as const, width: 0.3 }] }
    expect(marks([flash([5, 5])])).toHaveLength(1)
    expect(marks([flash([5, 5])], joined)).toEqual([])
    expect(marks([flash([5, 5], { bare: false })])).toEqual([])
    expect(marks([flash([5, 5], { size: [1.5, 1.5] })])).toEqual([])
    expect(marks([flash([5, 5], { size: 0.6 })])).toEqual([])
    expect(
      marks([flash([5, 5])], {
        holes: [
          [30, 30],
          [5, 5],
        ].map(([x, y]) => ({ at: [x!, y!], mm: 0.5, plated: true })),
      }),
    ).toEqual([])
  })
})
