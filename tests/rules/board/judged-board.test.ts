import { describe, expect, test } from 'vitest'
import { copperToEdgeMin } from '@/shared/plan/limits/spacings'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { barrelPlating, leadHoles } from '@/shared/plan/parameters/lead-holes'
import { spacings } from '@/shared/plan/parameters/spacings'
import { requirement, set, type SetValue } from '../facts-builder'
import { leadHole } from '../specification/lead-hole-rows'
import { spacing } from '../specification/spacing-rows'
import { boardFrom, type DrawnBoard } from './drawn-board'
import { judged, JUDGED_BOARD, SPECIFIED } from './judged-board'
import { netlist, record } from './netlist-text'

const board = boardFrom(JUDGED_BOARD)
const of = (key: string, values?: readonly SetValue[], drawn: DrawnBoard = JUDGED_BOARD) =>
  judged(drawn === JUDGED_BOARD ? board : boardFrom(drawn), values).get(key)!
const withOut = (...keys: readonly { key: string }[]) =>
  SPECIFIED.filter(([key]) => keys.every((each) => each.key !== key))
const places = (key: string, values?: readonly SetValue[]) =>
  of(key, values).places.map(({ subject, verdict, margin, at }) => [
    subject,
    verdict,
    margin && Number(margin.found.toFixed(6)),
    at.map((mm) => Number(mm.toFixed(3))),
  ])

describe('rings', () => {
  // IPC-2221B as the table of holes is judged by it: hole 1.15 ± 0.05, allowance of level B 0.25.
  // A land of 1.9: (1.9 − 1.2 − 0.25)/2 = 0.225; of 1.5: 0.025; one of 1.9 that is 0.1 off: 0.125.
  // Inside from the drilled hole of 1.2: (1.6 − 1.2 − 0.25)/2 = 0.075. A land of 1.9 by 2.4 counts across.
  test('are judged on every layer that has a land, off-centre ones from where they are', () => {
    expect(places('rings-on-board')).toEqual([
      ['X2 pin 1, top', 'fails', 0.025, [20, 10]],
      ['X2 pin 1, bottom', 'fails', 0.025, [20, 10]],
      ['X1 pin 1, inner 2', 'meets', 0.075, [10, 10]],
      ['X2 pin 2, bottom', 'meets', 0.125, [20, 20]],
      ['X1 pin 1, top', 'meets', 0.225, [10, 10]],
      ['X1 pin 1, bottom', 'meets', 0.225, [10, 10]],
      ['X1 pin 2, top', 'meets', 0.225, [12.3, 10]],
      ['X1 pin 2, bottom', 'meets', 0.225, [12.3, 10]],
      ['X2 pin 2, top', 'meets', 0.225, [20, 20]],
    ])
    expect(of('rings-on-board').finding).toMatchObject({ verdict: 'fails' })
  })
  test('say which land would do: 1.2 + 0.25 + 2 · (0.05 + 0.02) = 1.59, so 1.6', () => {
    expect(of('rings-on-board').places[0]!.remedy!.message).toContain('1.6 mm')
  })
  test('take the strictest of several rows with that hole', () => {
    const loose = leadHole({ component: 'R2', holeToleranceMm: 0.15 })
    const rows = set(leadHoles, [leadHole(), loose])
    // Largest hole 1.3: (1.9 − 1.3 − 0.25)/2 = 0.175.
    expect(places('rings-on-board', [...withOut(leadHoles), rows])[4]).toEqual([
      'X1 pin 1, top',
      'meets',
      0.175,
      [10, 10],
    ])
  })
  test('are undetermined where no row has the hole', () => {
    const rows = set(leadHoles, [leadHole({ holeMm: 0.9 })])
    const found = of('rings-on-board', [...withOut(leadHoles), rows])
    expect(found.finding.verdict).toBe('undetermined')
    expect(found.places[0]).toMatchObject({ subject: 'X2 pin 1, top', verdict: 'undetermined' })
  })
  test('lead to the narrowest where the specification says nothing', () => {
    const found = of('rings-on-board', [])
    expect(found.finding).toMatchObject({ verdict: 'undetermined' })
    expect(found.finding.missing).toContain('Holes and leads')
    // (1.5 − 1.15)/2
    expect(found.places[0]).toMatchObject({ subject: 'X2 pin 1, top', rank: expect.closeTo(0.175, 6) })
  })
})

describe('gaps', () => {
  // Lands of 1.9 at 2.3 apart: 0.4. Lines of 0.2 at 0.4 apart: 0.2, halfway at y = 7.8.
  test('are held against the least spacing stated, and against the row that names both nets', () => {
    expect(places('gaps-on-board')).toEqual([
      [expect.stringMatching(/^copper \d+ to copper \d+, top$/), 'fails', 0.2, [expect.anything(), 7.8]],
      ['VIN to GND, top', 'fails', 0.4, [11.15, 10]],
      ['VIN to GND, bottom', 'fails', 0.4, [11.15, 10]],
    ])
  })
  test('that equal what is stated meet', () => {
    const rows = set(spacings, [spacing({ gapMm: 0.2 })])
    expect(of('gaps-on-board', [...withOut(spacings), rows]).places.map(({ verdict }) => verdict)).toEqual([
      'meets',
      'meets',
      'meets',
    ])
  })
  test('of inner layers are undetermined without a spacing inside the board', () => {
    const parts = of('gaps-on-board').finding.parts!
    expect(parts.find(({ subject }) => subject === 'inner 2')).toMatchObject({ verdict: 'undetermined' })
    const inside = set(spacings, [spacing({ gapMm: 0.2 }), spacing({ category: 'B1', gapMm: 0.3 })])
    expect(of('gaps-on-board', [...withOut(spacings), inside]).finding.verdict).toBe('meets')
  })
  test('wider than they are looked for are undetermined', () => {
    const wide = set(spacings, [spacing({ gapMm: 0.8 })])
    const parts = of('gaps-on-board', [...withOut(spacings), wide]).finding.parts!
    expect(parts.filter(({ subject }) => subject === 'bottom')).toMatchObject([{ verdict: 'undetermined' }])
  })
})

describe('bare lands', () => {
  // MIL-PRF-55110G's 0.020 in, 0.5 mm: the lands of X1 lie 0.4 apart.
  test('are judged on the bottom, once a pair', () => {
    expect(places('bare-gaps-on-board')).toEqual([['VIN to GND, bottom', 'fails', 0.4, [11.15, 10]]])
  })
  test('are not bare where the mask covers them', () => {
    const masked = {
      ...JUDGED_BOARD,
      lands: JUDGED_BOARD.lands.map((land) => ({ ...land, bare: land.net === 'SENSE' })),
    }
    // Without an opening over them the holes are taken for vias; X2 keeps its own, and lies alone.
    expect(of('bare-gaps-on-board', SPECIFIED, masked).finding.verdict).toBe('meets')
  })
})

describe('edges', () => {
  // The line at y = 0.6, 0.3 wide: 0.45 from the edge; the one beside the cut-out: 25 − 24.2 − 0.2 = 0.6.
  test('are the outline and what is cut out', () => {
    expect(places('edges-on-board')).toEqual([
      [expect.stringMatching(/^copper \d+, top$/), 'fails', 0.45, [expect.anything(), 0.225]],
      [expect.stringMatching(/^copper \d+, top$/), 'meets', 0.6, [24.7, expect.anything()]],
      [expect.stringMatching(/^copper \d+, bottom$/), 'meets', 1.85, [33, expect.closeTo(0.925, 3)]],
    ])
  })
  test('are judged by the limit that the programme states', () => {
    const stated = { requirements: [requirement(copperToEdgeMin, 0.4, { relaxes: true })] }
    expect(judged(board, SPECIFIED, stated).get('edges-on-board')!.finding.verdict).toBe('meets')
  })
  test('copper beyond the outline fails by as much', () => {
    const beyond = {
      ...JUDGED_BOARD,
      lines: [
        ...JUDGED_BOARD.lines,
        { on: 'top' as const, from: [41, 10] as const, to: [41, 12] as const, width: 0.2 },
      ],
    }
    expect(of('edges-on-board', SPECIFIED, beyond).places[0]).toMatchObject({
      verdict: 'fails',
      margin: { found: -1 },
    })
  })
  test('are undetermined without a closed outline', () => {
    const open = { ...board, outline: { ...board.outline!, closed: false } }
    expect(judged(open).get('edges-on-board')!.finding).toMatchObject({
      verdict: 'undetermined',
      missing: ['A closed outline among the board files'],
    })
  })
})

describe('unplated holes', () => {
  // 35 − 33 − 1.5 − 0.15 = 0.35 from the wall.
  test('have walls that copper keeps away from', () => {
    expect(places('walls-on-board')).toEqual([['Hole of 3 mm, bottom', 'fails', 0.35, [33.325, 5]]])
  })
  test('that are cut through copper fail', () => {
    const through = {
      ...JUDGED_BOARD,
      lines: [{ on: 'top' as const, from: [35, 5] as const, to: [38, 5] as const, width: 0.4 }],
    }
    expect(of('walls-on-board', SPECIFIED, through).places[0]).toMatchObject({
      verdict: 'fails',
      margin: { found: 0 },
    })
  })
  test('are undetermined where plating is not said', () => {
    const unsaid = { ...board, holes: board.holes.map((hole) => ({ ...hole, plated: undefined })), walls: [] }
    expect(judged(unsaid).get('walls-on-board')!.finding.verdict).toBe('undetermined')
  })
})

describe('thickness', () => {
  // 1.6/(1.15 + 0.05) = 1.333; the via of 0.3 finished: 1.6/0.35 = 4.571, inside 5 by less than a tenth; drilled: 5.333.
  test('is held against every size of plated hole, vias too', () => {
    expect(places('aspect-on-board')).toEqual([
      ['1 of 0.3 mm', 'marginal', 4.571429, [30, 20]],
      ['4 of 1.15 mm', 'meets', 1.333333, [10, 10]],
    ])
  })
  test('by drilled sizes where all rows say so', () => {
    const rows = set(leadHoles, [leadHole({ holeGiven: 'drilled' })])
    expect(places('aspect-on-board', [...withOut(leadHoles), rows])[0]).toEqual([
      '1 of 0.3 mm',
      'fails',
      5.333333,
      [30, 20],
    ])
  })
  test('both ways where nothing is said, which decides only where both agree', () => {
    const values = withOut(leadHoles)
    expect(of('aspect-on-board', values).places.map(({ verdict }) => verdict)).toEqual([
      'undetermined',
      'meets',
    ])
    const thin = [...values.filter(([key]) => key !== boardThickness.key), set(boardThickness, 0.8)]
    expect(of('aspect-on-board', thin).finding.verdict).toBe('meets')
  })
  test('needs the metal on the wall', () => {
    expect(of('aspect-on-board', withOut(barrelPlating)).finding.missing).toEqual([barrelPlating.label])
  })
})

describe('the netlist', () => {
  const um = (mm: number): number => Math.round(mm * 1000)
  const records = JUDGED_BOARD.holes.map(({ at: [x, y], mm, plated }, at) =>
    record({
      code: plated ? '317' : '367',
      net: ['VIN', 'GND', 'SENSE', 'OUT', 'SENSE', 'N/C'][at]!,
      hole: um(mm),
      plated,
      x: um(x),
      y: um(y),
    }),
  )
  test('that asks for a joint the copper does not make fails there', () => {
    const drawn = { ...JUDGED_BOARD, netlist: netlist('CUST 1', ...records) }
    expect(of('netlist-on-board', SPECIFIED, drawn)).toMatchObject({
      finding: { verdict: 'fails' },
      places: [{ subject: 'SENSE', verdict: 'fails', at: [expect.closeTo(30), 20] }],
    })
  })
  test('that lies elsewhere decides nothing', () => {
    const drawn = { ...JUDGED_BOARD, netlist: netlist('CUST 0', ...records) }
    expect(of('netlist-on-board', SPECIFIED, drawn).finding.verdict).toBe('undetermined')
  })
  test('is no matter of a board without one', () => {
    expect(judged(board).has('netlist-on-board')).toBe(false)
  })
})

test('files without copper leave all of it open', () => {
  const bare = { ...JUDGED_BOARD, lands: [], lines: [] }
  const verdicts = [...judged(boardFrom(bare)).values()].map(({ letter, finding }) => [
    letter,
    finding.verdict,
  ])
  expect(verdicts).toEqual([
    ...[...'RGVCDBW'].map((letter) => [letter, 'undetermined']),
    // Nothing is open in the masks.
    ['M', 'not applicable'],
    ...[...'HEU'].map((letter) => [letter, 'undetermined']),
    // Holes without lands are no less plated.
    ['T', 'marginal'],
    ['O', 'not applicable'],
  ])
})
