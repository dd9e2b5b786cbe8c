import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { changeCostOn, changeCostOverTime } from '@/shared/cost/change-cost'
import { costsByDecision, decisionCosts } from '@/shared/cost/decision-costs'
import { expectedAndActual } from '@/shared/cost/expected-and-actual'
import { unitCosts } from '@/shared/cost/unit-costs'
import { exactly, isKnown, type Amount } from '@/shared/cost/amount'
import { answerOf } from '@/shared/gate/action-answer'
import { alternativeOf } from '@/shared/gate/option-alternative'
import type { OptionStudy } from '@/shared/gate/option-study'
import type { ActionEntry } from '@/shared/gate/programme-state'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { processCosts, solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { holes, run } from '@/tests/rules/record-builder'

/* Money is arithmetic of definitions: every figure below is worked by hand beside the check. */

const WAVE = {
  process: 'wave',
  fixed: 900,
  perBoard: 1.1,
  perJoint: 0.01,
  defectsPerMillion: 100,
  perRework: 12,
  foundPct: 90,
  failingPct: 20,
  perFieldRepair: 250,
}
const values = new Map<string, unknown>([
  [workingHourCost.key, 40],
  [solderingProcess.key, 'wave'],
  [processCosts.key, [WAVE]],
  [leadHoles.key, [holes(500)]],
])
const rework = (minutes: number, material?: number) => ({
  id: `w${minutes}`,
  doneOn: '2026-03-01',
  worker: 'A. Ward',
  assembly: 'A-1',
  joint: 'J1',
  defect: 'bridge' as const,
  heats: 1,
  minutes,
  material,
})
const returned = (cost?: number) => ({
  id: `r${cost}`,
  returnedOn: '2026-07-01',
  assembly: 'A-1',
  cause: 'board' as const,
  jointsFailed: 0,
  hours: undefined,
  joint: undefined,
  lesson: undefined,
  cost,
})
/** Both ends of an amount that has to be known here. */
function known(amount: Amount | undefined) {
  if (amount === undefined || !isKnown(amount)) throw new Error('This amount is not known.')
  return amount
}
const serving = (from: string, to: string, boards: number) => ({
  id: from,
  from,
  to,
  boards,
  hoursEach: 700,
  source: 'reports',
})

describe('unit costs', () => {
  test('are the mean of what is recorded: 15 and 45 minutes at 40 an hour with 2 of material cost 21', () => {
    const unit = unitCosts(values, {
      rework: [rework(15), rework(45, 2)],
      returns: [returned(180), returned(), returned(220)],
    })
    expect(unit.rework?.amount.from).toBeCloseTo((10 + 32) / 2, 10)
    expect(unit.fieldRepair?.amount.to).toBeCloseTo(200, 10)
    expect(unit.fieldRepair?.basis).toBe('mean of 2 returns with a cost')
  })
  test('fall back on what the process is expected to cost, and then on nothing', () => {
    const none = { rework: [], returns: [] }
    expect(unitCosts(values, none)).toMatchObject({
      rework: { amount: exactly(12) },
      fieldRepair: { amount: exactly(250) },
    })
    expect(unitCosts(new Map(), none)).toEqual({ rework: undefined, fieldRepair: undefined })
  })
})

describe('the cost of a change', () => {
  const unit = {
    rework: { amount: exactly(12), basis: '' },
    fieldRepair: { amount: exactly(250), basis: '' },
  }
  const facts = {
    runs: [
      run(24, { doneOn: '2026-03-23' }),
      run(24, { doneOn: '2026-03-24' }),
      run(40, { doneOn: '2026-03-24', skill: 'hand-soldering' }),
    ],
    exposures: [serving('2026-05-01', '2026-05-31', 40), serving('2026-06-01', '2026-06-30', 46)],
  }
  test('is nothing before the first board, rework while they are at hand, repair once they serve', () => {
    expect(changeCostOn('2026-03-01', facts, unit)).toMatchObject({ made: 0, cost: exactly(0) })
    expect(changeCostOn('2026-03-23', facts, unit)).toMatchObject({ made: 24, cost: exactly(24 * 12) })
    // A board is soldered by machine and by hand: it is counted once.
    expect(changeCostOn('2026-04-01', facts, unit)).toMatchObject({ made: 48, cost: exactly(48 * 12) })
    expect(changeCostOn('2026-05-10', facts, unit)).toMatchObject({
      serving: 40,
      cost: exactly(8 * 12 + 40 * 250),
    })
    expect(changeCostOn('2026-06-10', facts, unit)).toMatchObject({
      serving: 46,
      cost: exactly(2 * 12 + 46 * 250),
    })
    // Rework at 10 to 15: 48 boards at hand cost 480 to 720.
    const ranged = { ...unit, rework: { amount: { from: 10, to: 15 }, basis: '' } }
    expect(changeCostOn('2026-04-01', facts, ranged)?.cost).toEqual({ from: 480, to: 720 })
  })
  test('has a step on each day it changed, between the days asked', () => {
    const steps = changeCostOverTime(facts, unit, { from: '2026-02-02', to: '2026-05-15' })
    expect(steps.map(({ on }) => on)).toEqual([
      '2026-02-02',
      '2026-03-23',
      '2026-03-24',
      '2026-05-01',
      '2026-05-15',
    ])
  })
  test('is not said where what a repair costs is not known', () => {
    expect(changeCostOn('2026-05-10', facts, { ...unit, fieldRepair: undefined })).toBeUndefined()
    expect(changeCostOn('2026-03-24', facts, { ...unit, fieldRepair: undefined })?.cost).toEqual(exactly(576))
  })
  test('never falls as boards are made, while a repair costs no less than a rework', () => {
    const days = fc.array(fc.integer({ min: 1, max: 28 }), { minLength: 1, maxLength: 12 })
    fc.assert(
      fc.property(days, (some) => {
        const runs = some.map((day) => run(5, { doneOn: `2026-03-${String(day).padStart(2, '0')}` }))
        const costs = changeCostOverTime({ ...facts, runs }, unit, { from: '2026-02-01', to: '2026-07-01' })
        costs.forEach(({ cost }, at) => expect(cost.from).toBeGreaterThanOrEqual(costs[at - 1]?.cost.to ?? 0))
      }),
    )
  })
})

describe('decisions', () => {
  const action: ActionEntry = {
    id: 'a',
    number: 1,
    itemKey: 'lead-finish',
    from: 'design',
    to: 'production',
    kind: 'cost',
    question: 'What does nickel cost?',
    dueOn: '2026-02-13',
    askedById: 'i',
    askedByName: 'I',
    askedAt: '2026-02-05T08:00:00Z',
    askedOf: null,
    study: null,
    files: [],
    answer: answerOf({
      feasible: 'yes',
      amount: 0.5,
      amountPer: 'board',
      leadTimeDays: null,
      comment: '',
    }),
    answeredById: 'p',
    answeredByName: 'P',
    answeredAt: '2026-02-10T08:00:00Z',
    outcome: 'accepted',
    outcomeWhy: '',
  }
  const alternative = (name: string, costPerBoard: number, costOnce: number, defectsPerMillion: number) =>
    alternativeOf({ name, note: '', values: {}, costPerBoard, costOnce, defectsPerMillion })
  const study: OptionStudy = {
    number: 2,
    itemKey: 'board-finish',
    title: 'Finish',
    alternatives: [alternative('tin', 1, 0, 200), alternative('tin-lead', 1.2, 60, 100)],
    openedBy: 'I',
    openedAt: '2026-02-06T08:00:00Z',
    adoption: { name: 'tin-lead', why: '', by: 'I', at: '2026-02-12T08:00:00Z' },
  }
  const unit = {
    rework: { amount: exactly(20), basis: '' },
    fieldRepair: { amount: exactly(200), basis: '' },
  }
  const made = { boards: 240, lots: 2 }
  const costs = (actions: ActionEntry[], studies: OptionStudy[] = []) =>
    decisionCosts({ actions, studies }, made, values, unit)

  test('an accepted answer of 0.50 a board has cost 120 over 240 boards; a rework in 40 boards pays it', () => {
    expect(costs([action])).toEqual([
      expect.objectContaining({
        decidedAt: '2026-02-10T08:00:00Z',
        costSoFar: exactly(120),
        saved: undefined,
        paysAtBoardsPerRework: 40,
        paysAtBoardsPerRepair: 400,
      }),
    ])
  })
  test('an answer a lot counts for each lot, one paid once counts once, one not accepted not at all', () => {
    const per = (amountPer: 'lot' | 'once'): ActionEntry => ({
      ...action,
      answer: {
        ...action.answer!,
        amounts: [{ kind: 'other', per: amountPer, amount: 0.5, alternative: null }],
      },
    })
    expect(costs([per('lot')])[0]?.costSoFar).toEqual(exactly(1))
    expect(costs([per('once')])[0]?.costSoFar).toEqual(exactly(0.5))
    expect(costs([{ ...action, outcome: null }])).toEqual([])
  })
  // 500 joints: at 100 per million 0.05 defects, ·(0.9·12 + 0.1·0.2·250 = 15.8) = 0.79; at 200 per million 1.58.
  test('an adopted study is held against the next best, rework and repair counted', () => {
    const [found] = costs([], [study])
    const exact = (amount: Amount | undefined): number => (amount && isKnown(amount) ? amount.from : NaN)
    expect(exact(found?.costSoFar)).toBeCloseTo(60 + 1.2 * 240, 10)
    expect(found?.saved?.against).toBe('tin')
    expect(exact(found?.saved?.amount)).toBeCloseTo((1 + 1.58) * 240 - (60 + (1.2 + 0.79) * 240), 8)
    expect(found?.breakEvenBoards).toBeCloseTo(60 / (2.58 - 1.99), 8)
  })
  test('a study that nothing was adopted in costs nothing', () => {
    expect(costs([], [{ ...study, adoption: null }])).toEqual([])
  })
  test('sums that name a decision are added up under it, the dearest first', () => {
    const cost = (amount: number, decision?: string) => ({
      id: `${amount}`,
      spentOn: '2026-03-01',
      costClass: 'appraisal' as const,
      amount,
      what: 'x',
      decision,
    })
    expect(costsByDecision([cost(10, 'a'), cost(30, 'b'), cost(25, 'a'), cost(99)])).toEqual([
      { decision: 'a', amount: 35, records: 2 },
      { decision: 'b', amount: 30, records: 1 },
    ])
  })
})

describe('expected and actual', () => {
  test('240 boards of 500 joints at 100 per million: 129.60 here and 60 in service expected', () => {
    const found = expectedAndActual(values, 240, {
      rework: [rework(30), { ...rework(600), defect: 'component' }],
      returns: [{ ...returned(300), cause: 'solder-joint' }, returned(999)],
    })
    expect(known(found?.expectedHere).from).toBeCloseTo(240 * 0.05 * 0.9 * 12, 8)
    expect(known(found?.expectedInService).to).toBeCloseTo(240 * 0.05 * 0.1 * 0.2 * 250, 8)
    // Half an hour at 40, and the one return that a joint caused.
    expect(found).toMatchObject({ actualHere: exactly(20), actualInService: exactly(300) })
    const saved = found?.saved
    expect(saved !== undefined && isKnown(saved) && saved.from).toBeCloseTo(129.6 + 60 - 320, 8)
  })
  test('a return without a cost, and rework without a price for the hour, are not known and not nothing', () => {
    const unpriced = { ...returned(0), cause: 'solder-joint' as const, cost: undefined }
    expect(expectedAndActual(values, 240, { rework: [rework(30)], returns: [unpriced] })).toMatchObject({
      actualHere: exactly(20),
      actualInService: 'unknown',
      saved: 'unknown',
    })
    const without = new Map([...values].filter(([key]) => key !== workingHourCost.key))
    expect(expectedAndActual(without, 240, { rework: [rework(30)], returns: [] })).toMatchObject({
      actualHere: 'unknown',
      saved: 'unknown',
    })
  })
  test('a figure left out of the cost table is not known, and what does not rest on it is', () => {
    const open = new Map([...values, [processCosts.key, [{ ...WAVE, perFieldRepair: undefined }]]])
    const found = expectedAndActual(open, 240, { rework: [rework(30)], returns: [] })
    expect(known(found?.expectedHere).from).toBeCloseTo(129.6, 8)
    expect(found).toMatchObject({ expectedInService: 'unknown', expected: 'unknown', saved: 'unknown' })
    const none = { rework: [], returns: [] }
    expect(unitCosts(open, none)).toMatchObject({ rework: { amount: exactly(12) }, fieldRepair: undefined })
    const ranged = new Map([...values, [processCosts.key, [{ ...WAVE, perRework: '10..15' }]]])
    expect(unitCosts(ranged, none).rework?.amount).toEqual({ from: 10, to: 15 })
  })
  test('nothing is expected without a cost table or before the first board', () => {
    const none = { rework: [], returns: [] }
    expect(expectedAndActual(new Map(), 240, none)).toBeUndefined()
    expect(expectedAndActual(values, 0, none)).toBeUndefined()
  })
})
