import { describe, expect, test } from 'vitest'
import { nearestDrill } from '@/shared/physics/drill-choice'
import { finishedHole } from '@/shared/physics/finished-hole'
import { holeWindow } from '@/shared/physics/hole-window'
import { clearanceShares, radialClearance } from '@/shared/physics/lead-clearance'
import { leadEnvelope } from '@/shared/physics/lead-envelope'

const hole = (diameterMm: number, toleranceMm: number) =>
  finishedHole({ diameterMm, toleranceMm, given: 'finished', barrelUm: 25 })
const round = (widthMm: number, toleranceMm: number) => leadEnvelope({ shape: 'round', widthMm, toleranceMm })

describe('the share of joints inside a clearance window', () => {
  // Difference of two independent normals, computed with SciPy 1.17.1; diametral means,
  // standard deviations and window of the source, here as ± of three standard deviations.
  test.each([
    {
      hole: 1.0,
      holeSd: 0.025,
      lead: 0.8,
      leadSd: 0.01,
      from: 0.1,
      to: 0.3,
      below: 1.020420049902044e-4,
      above: 1.0204200499020434e-4,
    },
    {
      hole: 1.0,
      holeSd: 0.03,
      lead: 0.8,
      leadSd: 0.02,
      from: 0.15,
      to: 0.25,
      below: 0.08275892934873513,
      above: 0.08275892934873486,
    },
    {
      hole: 1.2,
      holeSd: 0.017,
      lead: 0.95,
      leadSd: 0.017,
      from: 0.2,
      to: 0.3,
      below: 0.01877534388875457,
      above: 0.01877534388875457,
    },
    {
      hole: 0.85,
      holeSd: 0.02,
      lead: 0.8,
      leadSd: 0.02,
      from: 0.1,
      to: 0.4,
      below: 0.9614500641282293,
      above: 1.7985578643234842e-35,
    },
  ])('hole $hole, lead $lead, window $from to $to', (row) => {
    const shares = clearanceShares(hole(row.hole, 3 * row.holeSd), round(row.lead, 3 * row.leadSd), {
      minMm: row.from / 2,
      maxMm: row.to / 2,
    })
    expect(shares.below / row.below).toBeCloseTo(1, 9)
    expect(shares.above / row.above).toBeCloseTo(1, 9)
  })
})

describe('radial clearance', () => {
  test('worst case and root-sum-square by hand: 1.15 ± 0.05 over 0.8 ± 0.025', () => {
    const { nominalMm, worstCase, rootSumSquare } = radialClearance(hole(1.15, 0.05), round(0.8, 0.025))
    expect(nominalMm).toBeCloseTo(0.175, 12)
    expect(worstCase.minMm).toBeCloseTo((1.1 - 0.825) / 2, 12)
    expect(worstCase.maxMm).toBeCloseTo((1.2 - 0.775) / 2, 12)
    // √(0.05² + 0.025²)/2 = 0.0279508…
    expect(rootSumSquare.maxMm).toBeCloseTo(0.175 + 0.02795084971874737, 12)
  })
})

describe('the circle a lead needs', () => {
  // IPC-2222B with the diagonal of a square pin of 0.62 to 0.66 mm, level B (arithmetic on the published rule).
  test('a square pin is as large as its diagonal, least and most apart', () => {
    const lead = leadEnvelope({ shape: 'square', widthMm: 0.64, toleranceMm: 0.02 })
    expect(lead.minMm).toBeCloseTo(0.8768, 4)
    expect(lead.maxMm).toBeCloseTo(0.9334, 4)
    const window = holeWindow(lead, 'B')
    expect(window.minMm).toBeCloseTo(1.1334, 4)
    expect(window.maxMm).toBeCloseTo(1.5768, 4)
  })
  test('a flat lead of 3 by 4 is as large as 5', () => {
    expect(leadEnvelope({ shape: 'flat', widthMm: 4, thicknessMm: 3, toleranceMm: 0 }).nominalMm).toBe(5)
  })
  test.each([
    { shape: 'round', widthMm: 0, toleranceMm: 0 },
    { shape: 'round', widthMm: 0.5, toleranceMm: 0.5 },
    { shape: 'round', widthMm: Number.NaN, toleranceMm: 0 },
    { shape: 'rectangular', widthMm: 1, toleranceMm: 0 },
  ] as const)('%o is refused', (lead) => {
    expect(() => leadEnvelope(lead)).toThrow(RangeError)
  })
})

describe('the hole window by producibility level', () => {
  // IPC-2222B, level B, lead 0.9 to 1.1 mm: hole 1.3 to 1.6 mm (published input and output of a footprint library).
  test('gives the published 1.3 to 1.6 mm', () => {
    const { minMm, maxMm, feasible } = holeWindow({ minMm: 0.9, maxMm: 1.1 }, 'B')
    expect([minMm, maxMm]).toEqual([expect.closeTo(1.3, 9), expect.closeTo(1.6, 9)])
    expect(feasible).toBe(true)
  })
  // The operands are easily swapped: 0.88 to 1.66 has the same middle and has been published.
  test('takes the largest lead for the least hole', () => {
    const { minMm, maxMm } = holeWindow({ minMm: 0.68, maxMm: 0.96 }, 'B')
    expect(minMm).toBeCloseTo(1.16, 9)
    expect(maxMm).toBeCloseTo(1.38, 9)
  })
  // IPC-2222A, level A, lead 32 mil ± 10 %: 45.2 to 56.8 mil printed with addends rounded to 10 and 28 mil.
  test('agrees with the textbook in mils within its rounding', () => {
    const mil = 0.0254
    const { minMm, maxMm } = holeWindow({ minMm: 28.8 * mil, maxMm: 35.2 * mil }, 'A')
    expect(minMm / mil).toBeCloseTo(45.04, 2)
    expect(maxMm / mil).toBeCloseTo(56.36, 2)
    expect(Math.abs(minMm / mil - 45.2)).toBeLessThan(0.5)
  })
  test('an empty window is reported, not swapped', () => {
    const window = holeWindow({ minMm: 0.4, maxMm: 1.0 }, 'B')
    expect(window.minMm).toBeCloseTo(1.2, 9)
    expect(window.maxMm).toBeCloseTo(1.1, 9)
    expect(window.feasible).toBe(false)
  })
})

describe('the finished hole', () => {
  // Textbook example: drill 51 mil, plating 1 mil, finished 49 mil.
  test('takes the plating off the drill twice', () => {
    const mil = 0.0254
    const { nominalMm } = finishedHole({
      diameterMm: 51 * mil,
      toleranceMm: 0,
      given: 'drilled',
      barrelUm: 25.4,
    })
    expect(nominalMm / mil).toBeCloseTo(49, 9)
  })
  test('works the drill back from a finished hole', () => {
    expect(hole(1.0, 0.05).drillMm).toBeCloseTo(1.05, 12)
  })
  test('plating that closes the hole is refused', () => {
    expect(() => finishedHole({ diameterMm: 0.2, toleranceMm: 0, given: 'drilled', barrelUm: 100 })).toThrow(
      RangeError,
    )
  })
})

describe('the nearest drill', () => {
  const sizesMm = [0.9, 1, 1.1, 1.2]
  test('finishes nearest to what is wanted', () => {
    expect(nearestDrill({ wantedMm: 1.06, minMm: 0.9, maxMm: 1.2, barrelUm: 25, sizesMm })).toEqual({
      drillMm: 1.1,
      finishedMm: 1.05,
    })
  })
  test('is none when none finishes inside', () => {
    expect(nearestDrill({ wantedMm: 1, minMm: 0.96, maxMm: 0.99, barrelUm: 25, sizesMm })).toBeUndefined()
  })
})
