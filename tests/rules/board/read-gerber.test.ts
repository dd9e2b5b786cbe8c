import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ringArea, type Solid } from '@/shared/board/geometry/solid'
import { readGerber } from '@/shared/board/gerber/read-gerber'
import { Unreadable } from '@/shared/board/unreadable'
import { at, gerber } from './small-board'

// Each case draws what the Gerber Layer Format Specification 2022.02 says in the section named, with areas by hand.

/** Circles become chords up to a micrometre inside. */
const CHORDS = 0.01

const areaOf = (solid: Solid): number => {
  if (solid.kind === 'polygon') return solid.rings.reduce((sum, ring) => sum + ringArea(ring), 0)
  const { a, b, radius } = solid
  return Math.PI * radius ** 2 + 2 * radius * Math.hypot(b[0] - a[0], b[1] - a[1])
}
const drawnBy = (...lines: string[]) => readGerber(gerber(...lines)).drawn
const areas = (...lines: string[]): number[] => drawnBy(...lines).map(({ solid }) => areaOf(solid))

test.each([
  ['4.4.2 circle', '%ADD10C,2*%', Math.PI],
  ['4.4.2 circle with a hole', '%ADD10C,2X1*%', Math.PI * 0.75],
  ['4.4.3 rectangle', '%ADD10R,3X2*%', 6],
  ['4.4.3 rectangle with a hole', '%ADD10R,3X2X1*%', 6 - Math.PI / 4],
  ['4.4.4 obround', '%ADD10O,3X2*%', Math.PI + 2],
  ['4.4.5 polygon: a square of diagonal 2', '%ADD10P,2X4*%', 2],
  ['4.5.1.3 macro circle', '%AMM*1,1,2,0,0,0*%\n%ADD10M*%', Math.PI],
  ['4.5.1.4 vector line', '%AMM*20,1,0.5,0,0,2,0,0*%\n%ADD10M*%', 1],
  ['4.5.1.5 centre line, turned', '%AMM*21,1,3,2,0,0,30*%\n%ADD10M*%', 6],
  ['4.5.1.6 outline with a variable', '%AMM*4,1,3,0,0,$1,0,0,$1,0,0,0*%\n%ADD10M,2*%', 2],
  ['4.5.1.7 polygon', '%AMM*5,1,4,0,0,2,0*%\n%ADD10M*%', 2],
  ['4.5.1.8 thermal', '%AMM*7,0,0,4,2,0.5,0*%\n%ADD10M*%', thermalArea(4, 2, 0.5)],
  ['4.5.4 arithmetic: (1+2)x2/3', '%AMM*$1=(1+2)x2/3*21,1,$1,1,0,0,0*%\n%ADD10M*%', 2],
  ['4.5.1.1 a square taken out of a disc', '%AMM*1,1,4,0,0,0*21,0,1,1,0,0,0*%\n%ADD10M*%', 4 * Math.PI - 1],
])('flashes a %s', (_, aperture, area) => {
  const [found] = areas(aperture, 'D10*', `${at(7, 5)}D03*`)
  expect(Math.abs(found! - area)).toBeLessThan(CHORDS)
})

/** An annulus less four gaps across it: each gap a strip between two arcs. */
function thermalArea(outer: number, inner: number, gap: number): number {
  const under = (radius: number, x: number): number =>
    (x * Math.sqrt(radius ** 2 - x ** 2) + radius ** 2 * Math.asin(x / radius)) / 2
  const strip = 2 * (under(outer / 2, gap / 2) - under(inner / 2, gap / 2))
  return (Math.PI / 4) * (outer ** 2 - inner ** 2) - 4 * strip
}

test('4.3: a drawn line is a stroke with round ends, exact', () => {
  const [stroke] = drawnBy('%ADD10C,0.5*%', 'D10*', `${at(1, 2)}D02*`, `${at(4, 6)}D01*`)
  expect(stroke).toMatchObject({
    by: 'stroke',
    solid: { kind: 'capsule', a: [1, 2], b: [4, 6], radius: 0.25 },
  })
})

test('4.7: an arc of a quarter and one of a whole turn', () => {
  const quarter = drawnBy(
    '%ADD10C,0.1*%',
    'D10*',
    'G75*',
    'G03*',
    `${at(1, 0)}D02*`,
    `${at(0, 1)}I-1000000J0D01*`,
  )
  const whole = drawnBy(
    '%ADD10C,0.1*%',
    'D10*',
    'G75*',
    'G02*',
    `${at(1, 0)}D02*`,
    `${at(1, 0)}I-1000000J0D01*`,
  )
  const single = drawnBy(
    '%ADD10C,0.1*%',
    'D10*',
    'G74*',
    'G03*',
    `${at(1, 0)}D02*`,
    `${at(0, 1)}I1000000J0D01*`,
  )
  const length = (drawn: typeof quarter) =>
    drawn.reduce(
      (sum, { solid }) =>
        solid.kind === 'capsule' ? sum + Math.hypot(solid.b[0] - solid.a[0], solid.b[1] - solid.a[1]) : sum,
      0,
    )
  expect(length(quarter)).toBeCloseTo(Math.PI / 2, 2)
  expect(length(single)).toBeCloseTo(Math.PI / 2, 2)
  expect(length(whole)).toBeCloseTo(2 * Math.PI, 2)
})

test('4.10: a region with an arc, turned to the left whichever way it was drawn', () => {
  const half = [
    'G36*',
    `${at(1, 0)}D02*`,
    'G75*',
    'G03*',
    `${at(-1, 0)}I-1000000J0D01*`,
    'G01*',
    `${at(1, 0)}D01*`,
    'G37*',
  ]
  const back = [
    'G36*',
    `${at(-1, 0)}D02*`,
    'G75*',
    'G02*',
    `${at(1, 0)}I1000000J0D01*`,
    'G01*',
    `${at(-1, 0)}D01*`,
    'G37*',
  ]
  for (const lines of [half, back]) expect(areas(...lines)[0]).toBeCloseTo(Math.PI / 2, 2)
})

test('4.9: mirrored, turned and scaled', () => {
  const [flash] = drawnBy(
    '%AMM*21,1,2,1,1,0,0*%',
    '%ADD10M*%',
    '%LMX*%',
    '%LR90*%',
    '%LS2*%',
    'D10*',
    `${at(0, 0)}D03*`,
  )
  const ys =
    flash!.solid.kind === 'polygon' ? flash!.solid.rings[0]!.filter((_, index) => index % 2 === 1) : []
  expect([Math.min(...ys), Math.max(...ys)]).toEqual([expect.closeTo(-4, 9), expect.closeTo(0, 9)])
  expect(areaOf(flash!.solid)).toBeCloseTo(8, 9)
})

test('4.11 and 4.12: a block is flashed and a pattern is repeated', () => {
  const block = drawnBy(
    '%ADD10C,1*%',
    '%ABD20*%',
    'D10*',
    `${at(0, 0)}D03*`,
    `${at(2, 0)}D03*`,
    '%AB*%',
    'D20*',
    `${at(10, 5)}D03*`,
  )
  expect(block.map(({ solid }) => solid.kind === 'capsule' && solid.a)).toEqual([
    [10, 5],
    [12, 5],
  ])
  const repeated = drawnBy('%ADD10C,1*%', '%SRX3Y2I5J4*%', 'D10*', `${at(1, 1)}D03*`, '%SR*%')
  expect(repeated.map(({ solid }) => solid.kind === 'capsule' && solid.a)).toEqual([
    [1, 1],
    [1, 5],
    [6, 1],
    [6, 5],
    [11, 1],
    [11, 5],
  ])
})

test('5: attributes of files, apertures and objects, in both forms', () => {
  const { attributes, drawn } = readGerber(
    gerber(
      '%TF.FileFunction,Copper,L1,Top*%',
      'G04 #@! TA.AperFunction,ComponentPad*',
      '%ADD10C,1*%',
      '%TD*%',
      '%ADD11C,0.2*%',
      '%TO.N,Net-(D1-Pad1)*%',
      '%TO.P,D1,1*%',
      'D10*',
      `${at(1, 1)}D03*`,
      '%TD*%',
      'D11*',
      `${at(3, 1)}D01*`,
    ),
  )
  expect(attributes.get('FileFunction')).toEqual(['Copper', 'L1', 'Top'])
  expect(drawn.map((object) => object.attributes)).toEqual([
    { net: 'Net-(D1-Pad1)', component: 'D1', pin: '1', use: ['ComponentPad'] },
    {},
  ])
})

test('3.2: inches, trailing zeros left out, and a modal operation of old files', () => {
  const { unit, drawn } = readGerber(
    '%FSTAX23Y23*%\n%MOIN*%\n%ADD10C,0.1*%\nD10*\nX01Y02D02*\nX02Y02D01*\nX03*\nM02*\n',
  )
  expect(unit).toBe('inch')
  expect(drawn.map(({ solid }) => solid.kind === 'capsule' && solid.b[0] / 25.4)).toEqual([
    2,
    expect.closeTo(3, 12),
  ])
})

test.each([
  ['breaks off', '%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,1*%\nD10*\nX0Y0D03*\n', /end, M02, is missing/],
  ['has no format', '%MOMM*%\n%ADD10C,1*%\nD10*\nX0Y0D03*\nM02*\n', /before its format/],
  ['has no unit', '%FSLAX46Y46*%\nM02*\n', /does not say its unit/],
  ['counts from the last point', '%FSLIX46Y46*%\n%MOMM*%\nM02*\n', /last point/],
  ['chooses an aperture that is not there', gerber('D10*'), /D10 is chosen but not defined/],
  ['turns the image over', gerber('%IPNEG*%'), /changes the whole image/],
  [
    'repeats without end',
    gerber('%ADD10C,1*%', '%SRX100000Y100000I1J1*%', 'D10*', 'X0Y0D03*', '%SR*%'),
    /more than 2000000 objects/,
  ],
  [
    'nests an expression without end',
    gerber(`%AMM*1,1,${'('.repeat(5000)}1*%`, '%ADD10M*%'),
    /cannot be worked out/,
  ],
  ['leaves a command open', '%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,1', /not closed/],
])('refuses a file that %s, with the line', (_, text, reason) => {
  expect(() => readGerber(text)).toThrow(Unreadable)
  expect(() => readGerber(text)).toThrow(reason)
})

test('law: whatever is cut off or written over, a file is read or refused with a line', () => {
  const sound = gerber(
    '%AMM*4,1,3,0,0,$1,0,0,$1,0,0,0*%',
    '%ADD10M,2*%',
    '%ADD11C,0.3*%',
    'D11*',
    'G75*',
    `${at(1, 0)}D02*`,
    'G03*',
    `${at(0, 1)}I-1000000J0D01*`,
    'G36*',
    `${at(1, 1)}D02*`,
    `${at(3, 1)}D01*`,
    'G37*',
    '%SRX3Y2I5J4*%',
    'D10*',
    `${at(9, 9)}D03*`,
    '%SR*%',
  )
  const spoilt = fc
    .tuple(fc.nat(sound.length), fc.nat(30), fc.string({ maxLength: 12 }))
    .map(([place, taken, written]) => sound.slice(0, place) + written + sound.slice(place + taken))
  fc.assert(
    fc.property(spoilt, (text) => {
      try {
        readGerber(text)
      } catch (error) {
        expect(error).toBeInstanceOf(Unreadable)
        expect((error as Unreadable).line).toBeGreaterThan(0)
      }
    }),
    { numRuns: 500 },
  )
})
