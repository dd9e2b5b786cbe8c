import { describe, expect, test } from 'vitest'
import { exactly } from '@/shared/cost/amount'
import type { AnsweredLine } from '@/shared/cost/cost-line'
import type { PricedAction, PricedStudy } from '@/shared/cost/decision-costs'
import { ceilingStanding } from '@/shared/cost/money-ceiling'

/* Money is arithmetic of definitions: every figure below is worked by hand beside the check. */

const action = (number: number, amounts: readonly AnsweredLine[] | null, over: Partial<PricedAction> = {}) =>
  ({
    number,
    kind: 'cost',
    study: null,
    outcome: 'accepted',
    itemKey: 'board-finish',
    question: `Question ${number}`,
    answeredAt: null,
    answer: amounts && { amounts },
    ...over,
  }) satisfies PricedAction
const line = (kind: AnsweredLine['kind'], per: AnsweredLine['per'], amount: AnsweredLine['amount']) => ({
  kind,
  per,
  amount,
  alternative: null,
})
const study = (adopted: string | null): PricedStudy => ({
  number: 1,
  itemKey: 'board-finish',
  title: 'Finish',
  adoption: adopted === null ? null : { name: adopted, at: '2026-02-12T08:00:00Z' },
  alternatives: ['A', 'B'].map((name, position) => ({
    name,
    values: {},
    defectsPerMillion: null,
    withdrawn: null,
    costs: [{ kind: 'piece', per: 'board', amount: position + 1 }],
    actions: [],
    drawsOnAnswers: true,
  })),
})
const held = (
  amount: number,
  actions: readonly PricedAction[],
  studies: readonly PricedStudy[] = [],
  lots: number | null = 4,
) => ceilingStanding({ actions, studies }, { amount, boards: 100, lots }, new Map())

describe('the ceiling of the project’s money', () => {
  test('holds an adopted study and an accepted answer: 100 · 2 + 50 is 250', () => {
    const answer = action(3, [line('tooling', 'once', 50)])
    expect(held(250, [answer], [study('B')])).toMatchObject({
      committedSum: exactly(250),
      standing: 'within',
      withOpen: 'within',
    })
    expect(held(249, [answer], [study('B')]).standing).toBe('passed')
  })

  test('counts what a lot costs for each lot, and not at all while the lots are not said', () => {
    const answer = action(3, [line('set-up', 'lot', 20)])
    expect(held(80, [answer])).toMatchObject({ committedSum: exactly(80), standing: 'within' })
    expect(held(80, [answer], [], null)).toMatchObject({ committedSum: 'unknown', standing: 'not known' })
  })

  test('is never said to hold while a figure is not known, and is passed where what is known passes it', () => {
    const answer = action(3, [line('tooling', 'once', 300), line('test', 'once', null)])
    expect(held(300, [answer]).standing).toBe('not known')
    expect(held(299, [answer]).standing).toBe('passed')
  })

  test('may be passed by a range', () => {
    const answer = action(3, [line('tooling', 'once', '100..200')])
    expect(held(150, [answer]).standing).toBe('may be passed')
    expect(held(200, [answer]).standing).toBe('within')
    expect(held(99, [answer]).standing).toBe('passed')
  })

  test('takes what is open from its cheapest to its dearest, and an unanswered question as not known', () => {
    const open = held(150, [], [study(null)])
    expect(open).toMatchObject({ openSum: { from: 100, to: 200 }, standing: 'within' })
    expect(open.withOpen).toBe('may be passed')
    expect(held(150, [action(3, null, { outcome: null })])).toMatchObject({
      openSum: 'unknown',
      withOpen: 'not known',
    })
  })

  test('counts an answer once: one asked within a study is that study’s money', () => {
    const within = action(3, [line('piece', 'board', 1)], { study: 1 })
    expect(held(500, [within], [study('B')]).committed).toHaveLength(1)
  })
})
