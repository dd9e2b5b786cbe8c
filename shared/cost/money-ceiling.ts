import { exactly, isKnown, knownPartOf, sumOf, times, type Amount } from './amount'
import { isMoney } from './cost-line'
import { answeredSums, studyCosts, type Made, type PricedAction, type PricedStudy } from './decision-costs'

/** What the programme may cost in all, over so many boards made in so many lots. */
export interface MoneyCeiling {
  readonly amount: number
  readonly boards: number
  /** Null where nobody says: what a lot costs cannot be counted then. */
  readonly lots: number | null
}

/** One decision as money over the boards of the ceiling. */
export interface Commitment {
  readonly kind: 'option study' | 'answered action'
  readonly number: number
  readonly itemKey: string
  readonly title: string
  readonly amount: Amount
  /** What of it is known: it comes to at least so much. */
  readonly known: Amount
}

/** Where the money of a programme stands against its ceiling. */
export interface CeilingStanding {
  readonly committed: readonly Commitment[]
  readonly open: readonly Commitment[]
  readonly committedSum: Amount
  readonly openSum: Amount
  /** What of each is known. */
  readonly committedKnown: Amount
  readonly openKnown: Amount
  /** Of what is committed alone. */
  readonly standing: 'within' | 'passed' | 'may be passed' | 'not known'
  /** Of what is committed with what is open, as dear as it may come. */
  readonly withOpen: 'within' | 'passed' | 'may be passed' | 'not known'
}

/**
 * What is committed is what adopted studies and accepted answers come to; what
 * is open, studies without a decision and answers that nobody accepted, is
 * counted beside it, from its cheapest to its dearest. Answers that a study draws
 * on are that study's money alone.
 */
export function ceilingStanding(
  {
    actions,
    studies,
  }: { readonly actions: readonly PricedAction[]; readonly studies: readonly PricedStudy[] },
  over: MoneyCeiling,
  values: ReadonlyMap<string, unknown>,
): CeilingStanding {
  const made: Made = { boards: over.boards, lots: over.lots ?? 0 }
  const inStudies = new Set(
    studies.flatMap(({ alternatives }) => alternatives.flatMap((alternative) => alternative.actions)),
  )
  const alone = actions.filter(
    ({ number, kind, study, outcome, answer }) =>
      study === null &&
      !inStudies.has(number) &&
      outcome !== 'withdrawn' &&
      (kind === 'cost' || (answer?.amounts.some(isMoney) ?? false)),
  )
  const ofAlone = (action: PricedAction) => answerCommitment(action, over)
  const committed = [
    ...studies.filter(({ adoption }) => adoption).flatMap((study) => ofStudy(study, actions, made, values)),
    ...alone.filter(({ outcome }) => outcome === 'accepted').map(ofAlone),
  ]
  const open = [
    ...studies.filter(({ adoption }) => !adoption).flatMap((study) => ofStudy(study, actions, made, values)),
    ...alone.filter(({ outcome }) => outcome !== 'accepted').map(ofAlone),
  ]
  const sum = (rows: readonly Commitment[]): Amount => sumOf(rows.map(({ amount }) => amount))
  const known = (rows: readonly Commitment[]): Amount => knownPartOf(rows.map((row) => row.known))
  const both = [...committed, ...open]
  return {
    committed,
    open,
    committedSum: sum(committed),
    openSum: sum(open),
    committedKnown: known(committed),
    openKnown: known(open),
    standing: standingOf(sum(committed), known(committed), over.amount),
    withOpen: standingOf(sum(both), known(both), over.amount),
  }
}

/** A sum that is not known passes a ceiling all the same where what is known of it does. */
function standingOf(sum: Amount, known: Amount, ceiling: number): CeilingStanding['standing'] {
  const least = isKnown(sum) ? sum : known
  if (isKnown(least) && least.from > ceiling) return 'passed'
  if (!isKnown(sum)) return 'not known'
  return sum.to > ceiling ? 'may be passed' : 'within'
}

/** An adopted alternative's total; of a study without a decision, from its cheapest alternative to its dearest. */
function ofStudy(
  study: PricedStudy,
  actions: readonly PricedAction[],
  made: Made,
  values: ReadonlyMap<string, unknown>,
): Commitment[] {
  const { number, itemKey, title, adoption } = study
  const { costs } = studyCosts(study, actions, made, values)
  const counted = adoption ? costs.filter(({ name }) => name === adoption.name) : costs
  if (counted.length === 0) return []
  const totals = counted.map(({ once, perBoard }) => sumOf([once, times(perBoard, made.boards)]))
  return [
    {
      kind: 'option study',
      number,
      itemKey,
      title: adoption ? `${title}: ${adoption.name}` : title,
      amount: spanOf(totals),
      known: exactly(Math.min(...counted.map(({ known }) => known.from))),
    },
  ]
}

/** From the least of several amounts to the most; not known where one is not. */
function spanOf(amounts: readonly Amount[]): Amount {
  const known = amounts.filter(isKnown)
  return known.length < amounts.length
    ? 'unknown'
    : { from: Math.min(...known.map(({ from }) => from)), to: Math.max(...known.map(({ to }) => to)) }
}

function answerCommitment(
  { number, itemKey, question, outcome, answer }: PricedAction,
  { boards, lots }: MoneyCeiling,
): Commitment {
  const amounts = answer && outcome !== 'returned' ? answer.amounts.filter(isMoney) : []
  const perLotKnown = lots !== null || amounts.every(({ per }) => per !== 'lot')
  const { perBoard, once } = answeredSums(amounts, lots ?? 1)
  const total = sumOf([once, times(perBoard, boards)])
  const parts = amounts.map((line) => {
    const { perBoard: each, once: outlay } = answeredSums([line], lots ?? 1)
    return sumOf([outlay, times(each, boards)])
  })
  return {
    kind: 'answered action',
    number,
    itemKey,
    title: question,
    amount: amounts.length === 0 || !perLotKnown ? 'unknown' : total,
    known: knownPartOf(parts),
  }
}
