import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cheapestByBoards, defectsToSave, optionCostCase } from '@/shared/cost/option-cost'
import type { OptionAlternative } from '@/shared/gate/option-study'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { processCosts, solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { set, type SetValue } from '@/tests/rules/facts-builder'

const alternative = (over: Partial<OptionAlternative>): OptionAlternative => ({
  name: 'A',
  note: '',
  values: {},
  costPerBoard: 0,
  costOnce: 0,
  defectsPerMillion: null,
  actions: [],
  ...over,
})

/**
 * Worked example, computed by hand from n·p·[D·rework + (1 − D)·field·P]: 500
 * joints at 100 per million, 95 % found at 8 each, a fifth of the escapes fail
 * at 800 each: 0.38 + 0.40 = 0.78 a board.
 */
const SPECIFIED: readonly SetValue[] = [
  set(solderingProcess, 'wave'),
  set(processCosts, [
    {
      process: 'wave',
      fixed: 0,
      perBoard: 0,
      perJoint: 0,
      defectsPerMillion: 100,
      perRework: 8,
      foundPct: 95,
      failingPct: 20,
      perFieldRepair: 800,
    },
  ]),
  set(leadHoles, [
    {
      component: 'J1',
      joints: 500,
      soldered: 'machine',
      plated: true,
      leadShape: 'round',
      leadMm: 0.6,
      leadToleranceMm: 0.02,
      holeMm: 0.95,
      holeGiven: 'finished',
      holeToleranceMm: 0.05,
      landMm: 1.9,
      leadThicknessMm: undefined,
      innerLandMm: undefined,
      leadsEach: undefined,
      clinched: undefined,
      leadPositionMm: undefined,
      onGrid: undefined,
    },
  ]),
]
const caseOf = (alternatives: readonly OptionAlternative[], boards: number, values = SPECIFIED) =>
  optionCostCase(
    alternatives.map((one) => ({ alternative: one, values: new Map(values) })),
    boards,
  )

describe('the cost case of alternatives', () => {
  test('sets 0.78 a board of rework and field repair beside the cost of the board', () => {
    const { costs, reworkCounted } = caseOf([alternative({ costPerBoard: 2, costOnce: 50 })], 1000)
    expect(reworkCounted).toBe(true)
    expect(costs[0]?.rework?.here).toBeCloseTo(0.38, 12)
    expect(costs[0]?.rework?.inService).toBeCloseTo(0.4, 12)
    expect(costs[0]?.running).toBeCloseTo(2.78, 12)
    expect(costs[0]?.total).toBeCloseTo(50 + 2780, 9)
  })

  test('an alternative that says its own defects is counted with these: half of them, half the cost', () => {
    const { costs } = caseOf([alternative({ defectsPerMillion: 50 }), alternative({ name: 'B' })], 1)
    expect(costs[0]?.rework).toMatchObject({ defectsPerMillion: 50, stated: true })
    expect(costs[0]?.rework?.total).toBeCloseTo(0.39, 12)
    expect(costs[1]?.rework).toMatchObject({ defectsPerMillion: 100, stated: false })
  })

  test('names what the specification lacks, and then counts rework for none of them', () => {
    const { costs, reworkCounted } = caseOf([alternative({ costPerBoard: 2 })], 10, SPECIFIED.slice(0, 1))
    expect(reworkCounted).toBe(false)
    expect(costs[0]?.missing).toEqual([leadHoles.label, processCosts.label])
    expect(costs[0]?.total).toBe(20)
  })

  test('says so when the chosen process has no row of costs', () => {
    const { costs } = caseOf([alternative({})], 1, [...SPECIFIED.slice(1), set(solderingProcess, 'dip')])
    expect(costs[0]?.missing).toEqual([`${processCosts.label}: the row for dip`])
  })

  test.each([0, -3, Number.NaN])('%s boards are refused', (boards) => {
    expect(() => caseOf([alternative({})], boards)).toThrow(RangeError)
  })
})

describe('the alternative that costs least', () => {
  // Break-even by definition: 20 000 once against 4 a board are even at 5000 boards.
  test('changes at 5000 boards where 20 000 once save 4 a board', () => {
    expect(
      cheapestByBoards([
        { name: 'by hand', once: 0, running: 6 },
        { name: 'by machine', once: 20_000, running: 2 },
      ]),
    ).toEqual([
      { name: 'by hand', from: 1 },
      { name: 'by machine', from: 5000 },
    ])
  })

  test('is one alone where it is cheapest in both, and of equals the first', () => {
    const line = (name: string) => ({ name, once: 5, running: 1 })
    expect(cheapestByBoards([line('A'), line('B'), { name: 'C', once: 9, running: 2 }])).toEqual([
      { name: 'A', from: 1 },
    ])
  })

  test('agrees with working every alternative out, at any number of boards', () => {
    const lines = fc.array(fc.record({ once: fc.nat(5000), running: fc.nat(100) }), {
      minLength: 1,
      maxLength: 6,
    })
    fc.assert(
      fc.property(lines, fc.integer({ min: 1, max: 20_000 }), (given, boards) => {
        const named = given.map((line, position) => ({ ...line, name: String(position) }))
        const cost = ({ once, running }: { once: number; running: number }) => once + running * boards
        const message = cheapestByBoards(named).findLast(({ from }) => from <= boards)
        const told = named.find(({ name }) => name === message?.name)
        expect(told).toBeDefined()
        expect(told && cost(told)).toBeCloseTo(Math.min(...named.map(cost)), 6)
      }),
    )
  })
})

describe('defects to be saved', () => {
  // By hand: 0.39 a board dearer; a defect costs 0.95 · 8 + 0.05 · 0.2 · 800 = 15.6; 0.39 ÷ (500 · 15.6) = 50 per million.
  test('0.39 a board more pays for itself when it saves 50 defects per million joints', () => {
    const { costs, boards } = caseOf(
      [alternative({ costPerBoard: 1.39 }), alternative({ name: 'B', costPerBoard: 1 })],
      400,
    )
    const [dearer, cheaper] = costs
    expect(dearer?.rework?.perDefect).toBeCloseTo(15.6, 12)
    expect(dearer && cheaper && defectsToSave(dearer, cheaper, boards)).toBeCloseTo(50, 9)
    expect(dearer && cheaper && defectsToSave(cheaper, dearer, boards)).toBe(0)
  })

  test('counts the outlay spread over the boards: 78 once over 400 boards and 0.195 a board are the same', () => {
    const { costs, boards } = caseOf(
      [alternative({ costOnce: 78, costPerBoard: 1.195 }), alternative({ name: 'B', costPerBoard: 1 })],
      400,
    )
    const [dearer, cheaper] = costs
    expect(dearer && cheaper && defectsToSave(dearer, cheaper, boards)).toBeCloseTo(50, 9)
  })

  test('cannot be said where no cost of a defect is known', () => {
    const [dearer, cheaper] = caseOf(
      [alternative({ costPerBoard: 2 }), alternative({ name: 'B' })],
      1,
      [],
    ).costs
    expect(dearer && cheaper && defectsToSave(dearer, cheaper, 1)).toBeUndefined()
  })
})
