import { describe, expect, test } from 'vitest'
import { boardLength, boardWidth, componentPlaces } from '@/shared/plan/parameters/assessment-inspection'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import type { Defect } from '@/shared/records/inspection'
import { defectDirection } from '@/shared/rules/assessment/defect-direction'
import { findingOf, set } from '../facts-builder'
import { electrical, holes, inspection } from '../record-builder'

const at = (component: string, row: 'along' | 'across' | 'neither', xMm?: number) => ({
  component,
  row,
  xMm,
  yMm: undefined,
})
const bridges = (...joints: string[]): Defect[] => joints.map((joint) => ({ kind: 'bridge', joint }))

/** 20 joints along the travel, 20 across. */
const judged = (
  defects: readonly Defect[],
  over: { tests?: ReturnType<typeof electrical>[]; places?: unknown } = {},
) =>
  findingOf(defectDirection, {
    values: [
      set(leadHoles, [holes(20, { component: 'U1' }), holes(20, { component: 'J1–J4' })]),
      ...(over.places === null
        ? []
        : [set(componentPlaces, [at('U1', 'along', 20), at('j1–j4', 'across', 80)])]),
    ],
    inspections: [inspection('A-1', 40, 0, { defects })],
    records: { 'electrical-test': over.tests ?? [] },
  })

describe('defects against the direction of travel', () => {
  // Exact binomial by hand: all of n defects in the one of two equal classes has a chance of 2 · ½ⁿ: n = 5 0.0625, n = 6 0.03125.
  test('five of five across the travel may be chance; six of six is named', () => {
    const five = judged(bridges('J1-1', 'J1-2', 'J1-3', 'J2-1', 'J3-1'))
    expect(five.verdict).toBe('not applicable')
    expect(five.found).toMatch(/too few defects to tell/)
    const spread = judged(bridges('J1-1', 'J1-2', 'J1-3', 'J2-1', 'J3-1', 'U1-1'))
    expect(spread.verdict).toBe('meets')
    // 2 · (6 + 1)/64 by hand.
    expect(spread.found).toMatch(/chance 0\.22/)
    const six = judged(bridges('J1-1', 'J1-2', 'J1-3', 'J2-1', 'J3-1', 'J4-1'))
    expect(six.verdict).toBe('marginal')
    expect(six.found).toMatch(/rows across the travel only there: .*chance 0\.031/)
    expect(six.parts?.[0]?.measured).not.toHaveProperty('ratio')
  })
  test('with a second comparison the same six are no longer telling, seven are (2 · ½⁷ = 0.0156 < 0.025)', () => {
    const both = (count: number) =>
      findingOf(defectDirection, {
        values: [
          set(leadHoles, [holes(20, { component: 'U1' }), holes(20, { component: 'J1' })]),
          set(componentPlaces, [at('U1', 'along', 20), at('J1', 'across', 80)]),
          set(boardLength, 100),
        ],
        inspections: [
          inspection('A-1', 40, 0, {
            defects: bridges(...Array.from({ length: count }, (_, pin) => `J1-${pin}`)),
          }),
        ],
      })
    expect(both(6).verdict).toBe('not applicable')
    expect(both(7).verdict).toBe('marginal')
    expect(both(7).parts?.map(({ subject }) => subject)).toEqual([
      'Way the rows lie',
      'Place along the travel',
    ])
    expect(both(7).parts?.[1]?.found).toMatch(/leading half/)
  })
  test('a joint found only by the electrical test counts too', () => {
    const defects = bridges('J1-1', 'J1-2', 'J1-3', 'J2-1', 'J3-1')
    const tests = [
      electrical({ assembly: 'A-1', tested: 1, passedFirst: 0, jointFailures: 1, joint: 'J4-9' }),
    ]
    expect(judged(defects, { tests }).verdict).toBe('marginal')
  })
  test('nothing said of where components stand asks nothing; no defect shows nothing', () => {
    expect(judged(bridges('J1-1'), { places: null }).found).toMatch(/not specified/)
    expect(judged([]).verdict).toBe('not applicable')
    expect(judged([]).found).toMatch(/no defect/)
  })
  test('places beyond the board are told', () => {
    const finding = findingOf(defectDirection, {
      values: [
        set(leadHoles, [holes(20, { component: 'U1' }), holes(20, { component: 'J1' })]),
        set(componentPlaces, [at('U1', 'along'), at('J1', 'across')]),
        set(boardLength, 100),
        set(boardWidth, 60),
      ],
      inspections: [
        inspection('A-1', 40, 0, { defects: [{ kind: 'bridge', joint: 'J1-1', xMm: 30, yMm: 61 }] }),
      ],
    })
    expect(finding.notes?.join()).toMatch(/outside the board: 1/)
  })
})
