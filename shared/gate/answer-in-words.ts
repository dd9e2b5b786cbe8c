import { formatNumber, formatQuantity } from '@/shared/quantity/format'
import type { ActionAnswer } from './programme-state'

const PER = { board: 'a board', lot: 'a lot', once: 'once' } as const
const FEASIBLE = {
  yes: 'feasible',
  no: 'not feasible',
  'with changes': 'feasible with changes',
  'not asked': '',
} as const

/** An action's answer in one line: "feasible, 0.42 a board, 10 days". */
export function answerInWords({ feasible, amount, amountPer, leadTimeDays, comment }: ActionAnswer): string {
  const said = [
    FEASIBLE[feasible],
    amount === null ? '' : `${formatNumber(amount, 6)}${amountPer ? ` ${PER[amountPer]}` : ''}`,
    leadTimeDays === null ? '' : formatQuantity(leadTimeDays, 'days', 6),
  ].filter(Boolean)
  return said.length > 0 ? said.join(', ') : comment
}
