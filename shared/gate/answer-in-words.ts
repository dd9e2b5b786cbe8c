import { amountInWords } from '@/shared/cost/amount-in-words'
import { amountOf, isKnown } from '@/shared/cost/amount'
import { COST_KIND_FACTS, PER_IN_WORDS, type AnsweredLine } from '@/shared/cost/cost-line'
import type { ActionAnswer } from './action-answer'

const FEASIBLE = {
  yes: 'feasible',
  no: 'not feasible',
  'with changes': 'feasible with changes',
  'not asked': '',
} as const

/** An action's answer in one line: "feasible, piece cost 0.42 a board, lead time 10 days". */
export function answerInWords({ feasible, amounts, comment }: ActionAnswer): string {
  const said = [FEASIBLE[feasible], ...amounts.map(lineInWords)].filter(Boolean)
  return said.length > 0 ? said.join(', ') : comment
}

/** "tooling 300 to 450 once (B)"; what an earlier version did not say the kind of is said without. */
export function lineInWords({ kind, per, amount, alternative }: AnsweredLine): string {
  const name = kind === 'other' ? '' : `${COST_KIND_FACTS[kind].label.toLowerCase()} `
  const figure = amountInWords(amountOf(amount), 6)
  const counted = kind === 'lead time' ? ' days' : per ? ` ${PER_IN_WORDS[per]}` : ''
  const unit = isKnown(amountOf(amount)) ? counted : ''
  return `${name}${figure}${unit}${alternative ? ` (${alternative})` : ''}`
}
