import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cheapestByBoards, defectsToSave, optionCostCase } from '@/shared/cost/option-cost'
import { exactly, isKnown, type Amount } from '@/shared/cost/amount'
import { drawnCosts, type AskedCost } from '@/shared/cost/drawn-costs'
import {
  alternativeOf,
  openedWith,
  type FirstAlternative,
  type OptionAlternative,
} from '@/shared/gate/option-alternative'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { processCosts, solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { set, type SetValue } from '@/tests/rules/facts-builder'

/** As an earlier version stored it: two figures of its own, both known. */
const alternative = (over: Partial<FirstAlternative>): OptionAlternative =>
  alternativeOf({ name: 'A', note: '', values: {}, costPerBoard: 0, costOnce: 0, ...over })

const exact = (amount: Amount | undefined): number =>
  amount !== undefined && isKnown(amount) && amount.from === amount.to ? amount.from : NaN

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
  optionCostCase(specified(alternatives, [], values), { boards })

function specified(
  alternatives: readonly OptionAlternative[],
  actions: readonly AskedCost[] = [],
  values = SPECIFIED,
) {
  const drawn = drawnCosts(1, alternatives, actions)
  return alternatives.map((one, position) => ({
    alternative: one,
    drawn: drawn[position] ?? { lines: [], replaced: [], gaps: [] },
    values: new Map(values),
  }))
}

describe('the cost case of alternatives', () => {
  test('sets 0.78 a board of rework and field repair beside the cost of the board', () => {
    const { costs, reworkCounted } = caseOf([alternative({ costPerBoard: 2, costOnce: 50 })], 1000)
    expect(reworkCounted).toBe(true)
    expect(exact(costs[0]?.rework?.here)).toBeCloseTo(0.38, 12)
    expect(exact(costs[0]?.rework?.inService)).toBeCloseTo(0.4, 12)
    expect(exact(costs[0]?.running)).toBeCloseTo(2.78, 12)
    expect(exact(costs[0]?.total)).toBeCloseTo(50 + 2780, 9)
  })

  test('an alternative that says its own defects is counted with these: half of them, half the cost', () => {
    const { costs } = caseOf([alternative({ defectsPerMillion: 50 }), alternative({ name: 'B' })], 1)
    expect(costs[0]?.rework).toMatchObject({ defectsPerMillion: exactly(50), stated: true })
    expect(exact(costs[0]?.rework?.total)).toBeCloseTo(0.39, 12)
    expect(costs[1]?.rework).toMatchObject({ defectsPerMillion: exactly(100), stated: false })
  })

  test('names what the specification lacks, and then counts rework for none of them', () => {
    const { costs, reworkCounted } = caseOf([alternative({ costPerBoard: 2 })], 10, SPECIFIED.slice(0, 1))
    expect(reworkCounted).toBe(false)
    expect(costs[0]?.missing).toEqual([leadHoles.label, processCosts.label])
    expect(exact(costs[0]?.total)).toBe(20)
  })

  test('a figure cleared in the cost table is not known: nothing is the least, and the figure is named', () => {
    const cleared = (SPECIFIED[1]?.[1] as readonly object[]).map((row) => ({ ...row, perRework: undefined }))
    const values: readonly SetValue[] = [...SPECIFIED, [processCosts.key, cleared]]
    const { costs, least, cheapest } = caseOf([alternative({ costPerBoard: 2 })], 10, values)
    expect(costs[0]?.rework).toMatchObject({ here: 'unknown', total: 'unknown', open: ['Per rework'] })
    expect(costs[0]?.total).toBe('unknown')
    expect([least, cheapest]).toEqual([undefined, undefined])
  })

  // Rework at 6 to 10: 0.05 · 0.95 · 6 = 0.285 to 0.05 · 0.95 · 10 = 0.475 here; in service 0.40 as above.
  test('a range in the cost table is a range of the board', () => {
    const ranged = (SPECIFIED[1]?.[1] as readonly object[]).map((row) => ({ ...row, perRework: '6..10' }))
    const values: readonly SetValue[] = [...SPECIFIED, [processCosts.key, ranged]]
    const { running } = caseOf([alternative({ costPerBoard: 2 })], 10, values).costs[0] ?? {}
    if (running === undefined || !isKnown(running)) throw new Error('The running cost is known.')
    expect(running.from).toBeCloseTo(2.685, 10)
    expect(running.to).toBeCloseTo(2.875, 10)
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
    expect(exact(dearer?.rework?.perDefect)).toBeCloseTo(15.6, 12)
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

describe('costs drawn from answers', () => {
  const open = (name: string, over: Partial<OptionAlternative> = {}) => ({
    ...openedWith({
      name,
      note: '',
      values: {},
      limits: [],
      costs: [],
      defectsPerMillion: null,
      actions: [],
    }),
    ...over,
  })
  const asked = (number: number, over: Partial<AskedCost> = {}): AskedCost => ({
    number,
    kind: 'cost',
    study: 1,
    outcome: null,
    answer: null,
    ...over,
  })
  const of = (alternatives: readonly OptionAlternative[], actions: readonly AskedCost[], lot?: number) =>
    optionCostCase(specified(alternatives, actions), { boards: 100, boardsPerLot: lot })
  const piece = (amount: number | null, alternative: string | null = null) => ({
    kind: 'piece' as const,
    per: 'board' as const,
    amount,
    alternative,
  })

  test('nothing named is not known, and never 0', () => {
    const { costs, least, cheapest } = of([open('A'), open('B')], [])
    expect(costs.map(({ total }) => total)).toEqual(['unknown', 'unknown'])
    expect(costs[0]?.gaps).toEqual([{ kind: 'nothing named' }])
    expect([least, cheapest]).toEqual([undefined, undefined])
  })

  test('an amount counts for the alternative it names, or for all', () => {
    const answer = { amounts: [piece(2, 'A'), piece(3, 'B')] }
    const { costs, least } = of([open('A'), open('B')], [asked(7, { answer })])
    // With the 0.78 a board of rework above: 100 · 2.78 and 100 · 3.78.
    expect(costs.map(({ total }) => exact(total))).toEqual([expect.closeTo(278, 9), expect.closeTo(378, 9)])
    expect(least).toBe('A')
    const all = of([open('A'), open('B')], [asked(7, { answer: { amounts: [piece(2)] } })])
    expect(all.costs.map(({ perBoard }) => exact(perBoard))).toEqual([2, 2])
  })

  test('takes the place of an own figure of the same kind, and of no other', () => {
    const own = open('A', {
      costs: [
        { kind: 'piece', per: 'board', amount: 9 },
        { kind: 'test', per: 'board', amount: 1 },
      ],
    })
    const { costs } = of([own], [asked(7, { answer: { amounts: [piece(2)] } })])
    expect(exact(costs[0]?.perBoard)).toBe(3)
    expect(costs[0]?.replaced).toEqual([{ kind: 'piece', per: 'board', amount: 9 }])
  })

  test('a question of cost without its answer, and one whose answer was returned, leave the sum not known', () => {
    const own = open('A', { costs: [{ kind: 'tooling', per: 'once', amount: 50 }] })
    for (const waiting of [asked(7), asked(7, { outcome: 'returned', answer: { amounts: [piece(2)] } })]) {
      const { costs } = of([own], [waiting])
      expect(costs[0]?.total).toBe('unknown')
      expect(costs[0]?.known.from).toBe(50)
      expect(costs[0]?.gaps).toContainEqual({ kind: 'unanswered', action: 7 })
    }
    expect(of([own], [asked(7, { outcome: 'withdrawn' })]).costs[0]?.gaps).toEqual([])
  })

  test('what one alternative prices the others have to price too', () => {
    const priced = open('A', { costs: [{ kind: 'tooling', per: 'once', amount: 50 }] })
    const { costs, least } = of([priced, open('B')], [asked(7, { answer: { amounts: [piece(2)] } })])
    expect(costs[1]?.gaps).toEqual([{ kind: 'not named', cost: 'tooling' }])
    expect(costs[1]?.total).toBe('unknown')
    expect(least).toBeUndefined()
  })

  test('ranges that overlap have no least; ranges that do not have one', () => {
    const ranged = (name: string, amount: `${number}..${number}`) =>
      open(name, { costs: [{ kind: 'piece', per: 'board', amount }] })
    expect(of([ranged('A', '1..3'), ranged('B', '2..4')], []).least).toBeUndefined()
    expect(of([ranged('A', '1..2'), ranged('B', '3..4')], []).least).toBe('A')
    expect(of([ranged('A', '1..2'), ranged('B', '3..4')], []).cheapest).toBeUndefined()
  })

  test('what a lot costs is spread over its boards, and not known while nobody says how many they are', () => {
    const lot = open('A', { costs: [{ kind: 'set-up', per: 'lot', amount: 50 }] })
    expect(of([lot], []).costs[0]?.perBoard).toBe('unknown')
    expect(exact(of([lot], [], 25).costs[0]?.perBoard)).toBe(2)
  })

  test('the longest lead time is the alternative’s', () => {
    const days = (amount: number | `${number}..${number}` | null) => ({
      kind: 'lead time' as const,
      per: null,
      amount,
    })
    expect(of([open('A', { costs: [days(10), days('5..14')] })], []).costs[0]?.leadTimeDays).toEqual({
      from: 10,
      to: 14,
    })
    expect(of([open('A', { costs: [days(10), days(null)] })], []).costs[0]?.leadTimeDays).toBe('unknown')
  })
})
