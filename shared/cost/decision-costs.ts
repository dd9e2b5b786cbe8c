import { optionCostCase, type PricedAlternative } from './option-cost'
import type { RecordOf } from '@/shared/records/record-kinds'
import { breakEvenQuantity } from './break-even'
import type { UnitCosts } from './unit-costs'

/** An action as far as its answer names money; the amount is null where it names none. */
export interface PricedAction {
  readonly number: number
  readonly itemKey: string
  readonly question: string
  readonly outcome: string | null
  readonly answer: {
    readonly amount: number | null
    readonly amountPer: 'board' | 'lot' | 'once' | null
  } | null
  readonly answeredAt: string | null
}

/** An option study as far as it is money: its alternatives, and which was adopted when. */
export interface PricedStudy {
  readonly number: number
  readonly itemKey: string
  readonly title: string
  readonly alternatives: readonly (PricedAlternative & {
    readonly values: Readonly<Record<string, unknown>>
  })[]
  readonly adoption: { readonly name: string; readonly at: string } | null
}

/** What a decision costs against doing without it, and what would pay for it. */
export interface DecisionCost {
  readonly kind: 'answered action' | 'option study'
  readonly number: number
  readonly itemKey: string
  readonly title: string
  /** 'YYYY-MM-DD' on which it was decided. */
  readonly on: string
  readonly once: number
  readonly perBoard: number
  /** Over the boards made so far. */
  readonly costSoFar: number
  /** Against the next best alternative over the boards made so far; undefined where there is none to compare. */
  readonly saved: { readonly amount: number; readonly against: string } | undefined
  /** Boards from which it costs less than the next best; 0 from the first. Undefined where nothing is compared. */
  readonly breakEvenBoards: number | undefined
  /** One rework, or one repair in service, avoided in so many boards pays for its cost a board. */
  readonly paysAtBoardsPerRework: number | undefined
  readonly paysAtBoardsPerRepair: number | undefined
}

/**
 * The accepted answers to questions of cost and the adopted option studies, as
 * money. What an answer names a lot is counted for every lot of bare boards
 * received. An answer has no alternative beside it, so what it saved is not
 * claimed: only what it must avoid to pay. Money is not discounted.
 */
export function decisionCosts(
  decided: { readonly actions: readonly PricedAction[]; readonly studies: readonly PricedStudy[] },
  made: { readonly boards: number; readonly lots: number },
  values: ReadonlyMap<string, unknown>,
  unit: UnitCosts,
): DecisionCost[] {
  return [
    ...decided.actions.flatMap((action) => ofAction(action, made, unit)),
    ...decided.studies.flatMap((study) => ofStudy(study, made.boards, values, unit)),
  ].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
}

function ofAction(
  { number, itemKey, question, outcome, answer, answeredAt }: PricedAction,
  { boards, lots }: { boards: number; lots: number },
  unit: UnitCosts,
): DecisionCost[] {
  if (outcome !== 'accepted' || !answer || answer.amount === null) return []
  const { amount, amountPer } = answer
  const perBoard = amountPer === 'board' ? amount : 0
  const once = amountPer === 'once' ? amount : amountPer === 'lot' ? amount * lots : 0
  return [
    {
      kind: 'answered action',
      number,
      itemKey,
      title: question,
      on: (answeredAt ?? '').slice(0, 10),
      once,
      perBoard,
      costSoFar: once + perBoard * boards,
      saved: undefined,
      breakEvenBoards: undefined,
      ...pays(perBoard, unit),
    },
  ]
}

function ofStudy(
  { number, itemKey, title, alternatives, adoption }: PricedStudy,
  boards: number,
  values: ReadonlyMap<string, unknown>,
  unit: UnitCosts,
): DecisionCost[] {
  const adopted = alternatives.find(({ name }) => name === adoption?.name)
  if (!adoption || !adopted) return []
  const { costs } = optionCostCase(
    alternatives.map((alternative) => ({
      alternative,
      values: new Map([...values, ...Object.entries(alternative.values)]),
    })),
    Math.max(1, boards),
  )
  const own = costs.find(({ name }) => name === adopted.name)
  const others = costs.filter(({ name }) => name !== adopted.name)
  const next = others.toSorted((a, b) => a.total - b.total)[0]
  const soFar = (cost: { once: number; running: number }): number => cost.once + cost.running * boards
  return [
    {
      kind: 'option study',
      number,
      itemKey,
      title: `${title}: ${adopted.name}`,
      on: adoption.at.slice(0, 10),
      once: adopted.costOnce,
      perBoard: adopted.costPerBoard,
      costSoFar: adopted.costOnce + adopted.costPerBoard * boards,
      saved: own && next && { amount: soFar(next) - soFar(own), against: next.name },
      breakEvenBoards:
        own && next && breakEvenQuantity(Math.max(0, own.once - next.once), next.running - own.running),
      ...pays(adopted.costPerBoard, unit),
    },
  ]
}

const pays = (perBoard: number, { rework, fieldRepair }: UnitCosts) => ({
  paysAtBoardsPerRework: perBoard > 0 && rework ? rework.amount / perBoard : undefined,
  paysAtBoardsPerRepair: perBoard > 0 && fieldRepair ? fieldRepair.amount / perBoard : undefined,
})

/** Sums that a decision's name stands behind, by class, for the decisions that any recorded sum names. */
export function costsByDecision(
  costs: readonly RecordOf<'quality-cost'>[],
): { readonly decision: string; readonly amount: number; readonly records: number }[] {
  const sums = new Map<string, { amount: number; records: number }>()
  for (const { decision, amount } of costs) {
    if (!decision) continue
    const known = sums.get(decision) ?? { amount: 0, records: 0 }
    sums.set(decision, { amount: known.amount + amount, records: known.records + 1 })
  }
  return [...sums]
    .map(([decision, sum]) => ({ decision, ...sum }))
    .sort((a, b) => b.amount - a.amount || (a.decision < b.decision ? -1 : 1))
}
