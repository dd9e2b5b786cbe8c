import { isExact, isKnown, leastOf, lessAmount, NO_AMOUNT, sumOf, times, type Amount } from './amount'
import { breakEvenQuantity } from './break-even'
import { amountIn, isMoney, type AnsweredLine, type CostPer } from './cost-line'
import type { AskedCost, CostedAlternative } from './drawn-costs'
import { optionCostCase, type OptionCost, type PricedAlternative } from './option-cost'
import type { RecordOf } from '@/shared/records/record-kinds'
import { specifiedOf } from './specified-alternatives'
import type { UnitCosts } from './unit-costs'

/** An action as far as its answer names money. */
export interface PricedAction extends AskedCost {
  readonly itemKey: string
  readonly question: string
  readonly answeredAt: string | null
}

/** An option study as far as it is money: its alternatives, and which was adopted when. */
export interface PricedStudy {
  readonly number: number
  readonly itemKey: string
  readonly title: string
  readonly alternatives: readonly StudiedAlternative[]
  readonly adoption: { readonly name: string; readonly at: string } | null
}
type StudiedAlternative = PricedAlternative &
  CostedAlternative & {
    readonly values: Readonly<Record<string, unknown>>
    readonly withdrawn: unknown
  }

/** What a decision costs against doing without it, and what would pay for it. */
export interface DecisionCost {
  readonly kind: 'answered action' | 'option study'
  readonly number: number
  readonly itemKey: string
  readonly title: string
  /** The instant at which it was decided. */
  readonly decidedAt: string
  readonly once: Amount
  readonly perBoard: Amount
  /** Over the boards made so far. */
  readonly costSoFar: Amount
  /** Against the next best alternative over the boards made so far; undefined where there is none to compare. */
  readonly saved: { readonly amount: Amount; readonly against: string } | undefined
  /** Boards from which it costs less than the next best; 0 from the first. Undefined where nothing is compared. */
  readonly breakEvenBoards: number | undefined
  /** One rework, or one repair in service, avoided in so many boards pays for its cost a board; of ranges, surely pays. */
  readonly paysAtBoardsPerRework: number | undefined
  readonly paysAtBoardsPerRepair: number | undefined
}

/** Boards and lots that costs are counted over. */
export interface Made {
  readonly boards: number
  readonly lots: number
}

/**
 * The accepted answers to questions of cost and the adopted option studies, as
 * money. What an answer names a lot is counted for every lot of bare boards
 * received. An answer has no alternative beside it, so what it saved is not
 * claimed: only what it must avoid to pay; one asked within a study is that
 * study's money. Money is not discounted; what is not known stays so.
 */
export function decisionCosts(
  decided: { readonly actions: readonly PricedAction[]; readonly studies: readonly PricedStudy[] },
  made: Made,
  values: ReadonlyMap<string, unknown>,
  unit: UnitCosts,
): DecisionCost[] {
  return [
    ...decided.actions.flatMap((action) => ofAction(action, made, unit)),
    ...decided.studies.flatMap((study) => ofStudy(study, decided.actions, made, values, unit)),
  ].sort((a, b) => (a.decidedAt < b.decidedAt ? -1 : a.decidedAt > b.decidedAt ? 1 : 0))
}

/** What the amounts of one answer come to, by what they are counted by. */
export function answeredSums(amounts: readonly AnsweredLine[], lots: number) {
  const of = (per: CostPer): Amount =>
    sumOf(amounts.filter((line) => isMoney(line) && line.per === per).map(amountIn))
  return { perBoard: of('board'), once: sumOf([of('once'), times(of('lot'), lots)]) }
}

function ofAction(
  { number, itemKey, question, study, outcome, answer, answeredAt }: PricedAction,
  { boards, lots }: Made,
  unit: UnitCosts,
): DecisionCost[] {
  if (outcome !== 'accepted' || study !== null || !answer?.amounts.some(isMoney)) return []
  const { perBoard, once } = answeredSums(answer.amounts, lots)
  return [
    {
      kind: 'answered action',
      number,
      itemKey,
      title: question,
      decidedAt: answeredAt ?? '',
      once,
      perBoard,
      costSoFar: sumOf([once, times(perBoard, boards)]),
      saved: undefined,
      breakEvenBoards: undefined,
      ...pays(perBoard, unit),
    },
  ]
}

/** What the alternatives of a study that stand cost over boards made in lots. */
export function studyCosts(
  { number, alternatives, adoption }: PricedStudy,
  actions: readonly AskedCost[],
  { boards, lots }: Made,
  values: ReadonlyMap<string, unknown>,
) {
  const compared = alternatives.filter(({ name, withdrawn }) => !withdrawn || name === adoption?.name)
  const specified = compared.map((alternative) => ({
    alternative,
    values: new Map([...values, ...Object.entries(alternative.values)]),
  }))
  return optionCostCase(specifiedOf(number, specified, actions), {
    boards: Math.max(1, boards),
    boardsPerLot: lots > 0 ? Math.max(1, boards) / lots : undefined,
  })
}

function ofStudy(
  study: PricedStudy,
  actions: readonly AskedCost[],
  made: Made,
  values: ReadonlyMap<string, unknown>,
  unit: UnitCosts,
): DecisionCost[] {
  const { number, itemKey, title, adoption } = study
  const { costs } = studyCosts(study, actions, made, values)
  const own = costs.find(({ name }) => name === adoption?.name)
  if (!adoption || !own) return []
  const next = leastOf(
    costs.filter(({ name }) => name !== own.name),
    ({ total }) => total,
  )
  const soFar = ({ once, running }: Pick<OptionCost, 'once' | 'running'>): Amount =>
    sumOf([once, times(running, made.boards)])
  return [
    {
      kind: 'option study',
      number,
      itemKey,
      title: `${title}: ${own.name}`,
      decidedAt: adoption.at,
      once: own.once,
      perBoard: own.perBoard,
      costSoFar: soFar({ once: own.once, running: own.perBoard }),
      saved: next && { amount: lessAmount(soFar(next), soFar(own)), against: next.name },
      breakEvenBoards: next && breakEvenBoards(own, next),
      ...pays(own.perBoard, unit),
    },
  ]
}

function breakEvenBoards(own: OptionCost, next: OptionCost): number | undefined {
  const [outlay, saving] = [lessAmount(own.once, next.once), lessAmount(next.running, own.running)]
  return isKnown(outlay) && isExact(outlay) && isKnown(saving) && isExact(saving)
    ? breakEvenQuantity(Math.max(0, outlay.from), saving.from)
    : undefined
}

function pays(perBoard: Amount, { rework, fieldRepair }: UnitCosts) {
  const most = isKnown(perBoard) ? perBoard.to : NO_AMOUNT.to
  return {
    paysAtBoardsPerRework: most > 0 && rework ? rework.amount.from / most : undefined,
    paysAtBoardsPerRepair: most > 0 && fieldRepair ? fieldRepair.amount.from / most : undefined,
  }
}

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
