import { describe, expect, test } from 'vitest'
import { gridShareMin } from '@/shared/plan/limits/lead-holes'
import { boardThickness } from '@/shared/plan/parameters/laminate'
import { drillSeries, barrelPlating, leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { copperToEdge, partsToEdge, spacings, type SpacingRow } from '@/shared/plan/parameters/spacings'
import { aspectRatio } from '@/shared/rules/specification/aspect-ratio'
import { bridgingRisk } from '@/shared/rules/specification/bridging-risk'
import { edgeClearance } from '@/shared/rules/specification/edge-clearance'
import { gridShare } from '@/shared/rules/specification/grid-share'
import { preferredDrills } from '@/shared/rules/specification/preferred-drills'
import { afterCellRemedy } from '../cell-remedy'
import { afterRemedy, factsWith, findingOf, requirement, set, type SetValue } from '../facts-builder'
import { leadHole } from './lead-hole-rows'
import { spacing } from './spacing-rows'

const board = (rows: readonly LeadHole[], ...more: SetValue[]) => ({
  values: [set(leadHoles, rows), set(barrelPlating, 25), ...more],
})

describe('aspect ratio', () => {
  const thick = (boardMm: number, rows: readonly LeadHole[]) => board(rows, set(boardThickness, boardMm))
  // Coombs & Holden: routine up to 3, not above 5. Drilled 0.5 mm: 2.5 mm is exactly 5.
  test.each([
    [1.6, 'meets'],
    [2.4, 'marginal'],
    [2.5, 'marginal'],
    [2.51, 'fails'],
  ] as const)('%s mm through a drilled 0.5 mm hole %s', (boardMm, verdict) => {
    const rows = [leadHole({ holeGiven: 'drilled', holeMm: 0.5, holeToleranceMm: 0.05 })]
    expect(findingOf(aspectRatio, thick(boardMm, rows)).verdict).toBe(verdict)
  })
  test('the drill of the remedy meets', () => {
    const rows = [leadHole({ holeGiven: 'drilled', holeMm: 0.5, holeToleranceMm: 0.05 })]
    const { remedy } = findingOf(aspectRatio, thick(3.2, rows))
    const drill = Number(/at least ([\d.]+) mm/.exec(remedy?.message ?? '')?.[1])
    const mended = [leadHole({ holeGiven: 'drilled', holeMm: drill, holeToleranceMm: 0.05 })]
    expect(findingOf(aspectRatio, thick(3.2, mended)).verdict).toBe('meets')
  })
  test('unplated holes have no barrel to thin', () => {
    expect(findingOf(aspectRatio, thick(3.2, [leadHole({ plated: false, holeMm: 0.3 })])).verdict).toBe(
      'not applicable',
    )
  })
})

describe('grid share', () => {
  const rows = (onGrid: number, off: number) => [
    leadHole({ joints: onGrid, onGrid: true }),
    leadHole({ component: 'T1', joints: off, onGrid: false }),
  ]
  test.each([
    [97, 3, 'meets'],
    [92, 8, 'marginal'],
    [90, 10, 'marginal'],
    [89, 11, 'fails'],
  ] as const)('%s on and %s off %s', (onGrid, off, verdict) => {
    expect(findingOf(gridShare, board(rows(onGrid, off))).verdict).toBe(verdict)
  })
  test('a row that does not say counts as off the grid when others say', () => {
    const mixed = [leadHole({ joints: 50, onGrid: true }), leadHole({ component: 'T1', joints: 50 })]
    expect(findingOf(gridShare, board(mixed)).verdict).toBe('fails')
  })
  test('a table that does not speak of a grid is held to one only where the programme asks for it', () => {
    const silent = board([leadHole()])
    expect(findingOf(gridShare, silent)).toMatchObject({
      verdict: 'not applicable',
      limit: 'Not required in this programme.',
    })
    const asked = findingOf(gridShare, { ...silent, requirements: [requirement(gridShareMin, 80)] })
    expect(asked).toMatchObject({ verdict: 'undetermined', missing: ['which holes lie on the grid'] })
  })
})

describe('preferred drills', () => {
  const metric = set(drillSeries, 'metric-0.1')
  test('a drilled size of the series meets; one off it is told the nearest', () => {
    expect(
      findingOf(preferredDrills, board([leadHole({ holeGiven: 'drilled', holeMm: 1.2 })], metric)).verdict,
    ).toBe('meets')
    const odd = board([leadHole({ holeGiven: 'drilled', holeMm: 1.17 })], metric)
    expect(findingOf(preferredDrills, odd).verdict).toBe('marginal')
    expect(afterCellRemedy(preferredDrills, factsWith(odd)).verdict).toBe('meets')
  })
  test('a finished size is looked up by the drill that makes it', () => {
    // 1.15 finished with 25 µm a wall is drilled 1.20.
    expect(findingOf(preferredDrills, board([leadHole()], metric)).verdict).toBe('meets')
    const odd = board([leadHole({ holeMm: 1.1 })], metric)
    expect(afterCellRemedy(preferredDrills, factsWith(odd)).verdict).toBe('meets')
  })
  test('without a series nothing is asked', () => {
    expect(findingOf(preferredDrills, board([leadHole({ holeMm: 1.1234 })])).verdict).toBe('not applicable')
  })
})

describe('bridging risk', () => {
  const bare = (over: Partial<SpacingRow>) => spacing({ solderSide: 'bare', ...over })
  const judged = (...rows: SpacingRow[]) => findingOf(bridgingRisk, { values: [set(spacings, rows)] })
  // MIL-PRF-55110G, A.3.5.7.1b: 0.5 mm between exposed parallel conductors.
  test.each([
    [bare({ gapMm: 0.49 }), 'fails'],
    [bare({ gapMm: 0.5 }), 'marginal'],
    [bare({ gapMm: 0.6, parallelMm: 2 }), 'meets'],
    [bare({ gapMm: 0.6 }), 'marginal'],
    [bare({ gapMm: 1 }), 'meets'],
    [spacing({ gapMm: 0.2, solderSide: 'masked' }), 'not applicable'],
    [spacing({ gapMm: 0.2, solderSide: 'away' }), 'not applicable'],
  ] as const)('%o', (row, verdict) => {
    expect(judged(row).verdict).toBe(verdict)
  })
  test('a long run across the travel is close to the limit, along it not', () => {
    expect(judged(bare({ gapMm: 0.6, parallelMm: 30, travelAngleDeg: 90 })).verdict).toBe('marginal')
    expect(judged(bare({ gapMm: 0.6, parallelMm: 30 })).verdict).toBe('marginal')
    expect(judged(bare({ gapMm: 0.6, parallelMm: 30, travelAngleDeg: 0 })).verdict).toBe('meets')
    expect(judged(bare({ gapMm: 1, parallelMm: 30, travelAngleDeg: 90 })).verdict).toBe('meets')
  })
  // By hand: a tenth of the 10 mm is kept free, so a run is near the limit from 9 mm on.
  test.each([
    [8.9, 'meets'],
    [9.5, 'marginal'],
  ] as const)('a run of %s mm across the travel %s', (parallelMm, verdict) => {
    expect(judged(bare({ gapMm: 0.6, parallelMm })).verdict).toBe(verdict)
  })
  // By hand: 12 mm at 30° are 12 · 0.5 = 6 mm across, 4 mm within the limit; the gap has 0.1 mm, two tenths of its least.
  test('what decides is shown with its numbers', () => {
    const finding = judged(bare({ gapMm: 0.6, parallelMm: 12, travelAngleDeg: 30 }))
    expect(finding).toMatchObject({ verdict: 'meets', margin: { found: 0.6, limit: 0.5 } })
    expect(finding.remedy).toBeUndefined()
    expect(finding.parts?.[0]?.measured).toEqual({
      gap: { value: 0.6, unit: 'mm' },
      acrossTravel: { value: 6, unit: 'mm' },
    })
    expect(finding.working).toMatchObject([{ numbers: '12 mm · sin(30°)', result: '6 mm' }])
    expect(judged(bare({ gapMm: 0.6, parallelMm: 30 })).margin).toMatchObject({ found: 30, limit: 10 })
    // Twice the least gap bridges no longer for its length, so its run is no margin.
    expect(judged(bare({ gapMm: 1, parallelMm: 30 })).margin).toMatchObject({ found: 1, limit: 0.5 })
  })
  test('a run that nobody has stated is asked for, the gap being wide enough', () => {
    const { parts, remedy } = judged(bare({ gapMm: 0.6 }))
    expect(parts?.[0]?.measured).toEqual({ gap: { value: 0.6, unit: 'mm' }, sideBySide: 'not specified' })
    expect(remedy?.message).toContain('state how long')
    expect(remedy?.cell).toBeUndefined()
  })
  // By hand: the next 0.05 mm above the least and its tenth, 0.55 mm, where the gap alone decides; else above twice the least, 1 mm.
  test.each([
    [bare({ gapMm: 0.3, parallelMm: 2 }), 0.6],
    [bare({ gapMm: 0.52, parallelMm: 2 }), 0.6],
    [bare({ gapMm: 0.3 }), 1.05],
    [bare({ gapMm: 0.3, parallelMm: 30 }), 1.05],
    [bare({ gapMm: 0.6, parallelMm: 30 }), 1.05],
  ])('%o is opened to %s mm', (row, wantedMm) => {
    expect(judged(row).remedy?.cell?.value).toBeCloseTo(wantedMm, 9)
  })
  test.each([
    bare({ gapMm: 0.3 }),
    bare({ gapMm: 0.6, parallelMm: 30, travelAngleDeg: 90 }),
    bare({ gapMm: 0.3, parallelMm: 30 }),
  ])('the gap of the remedy meets', (row) => {
    expect(afterCellRemedy(bridgingRisk, factsWith({ values: [set(spacings, [row])] })).verdict).toBe('meets')
  })
})

describe('edge clearance', () => {
  const edges = (copper: number, parts: number) => ({
    values: [set(copperToEdge, copper), set(partsToEdge, parts)],
  })
  test.each([
    [1, 5, 'meets'],
    [0.5, 5, 'marginal'],
    [0.4, 5, 'fails'],
    [1, 2.9, 'fails'],
  ] as const)('copper %s, parts %s mm %s', (copper, parts, verdict) => {
    expect(findingOf(edgeClearance, edges(copper, parts)).verdict).toBe(verdict)
  })
  test.each([
    [0.1, 5],
    [1, 1],
  ])('the remedy for %s and %s mm meets', (copper, parts) => {
    expect(afterRemedy(edgeClearance, factsWith(edges(copper, parts))).verdict).toBe('meets')
  })
})
