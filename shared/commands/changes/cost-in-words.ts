import { amountOf } from '@/shared/cost/amount'
import { amountInWords } from '@/shared/cost/amount-in-words'
import { PER_IN_WORDS } from '@/shared/cost/cost-line'

/** What a change notice costs, in the installation's currency; null where nobody knows. */
export interface NoticeCost {
  readonly costPerBoard: number | null
  readonly costOnce: number | null
}

/** "0.4 a board, not known once" */
export const noticeCostInWords = ({ costPerBoard, costOnce }: NoticeCost): string =>
  `${amountInWords(amountOf(costPerBoard), 6)} ${PER_IN_WORDS.board}, ${amountInWords(amountOf(costOnce), 6)} ${PER_IN_WORDS.once}`
