import { choiceColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { amountOf, type Amount, type StoredAmount } from './amount'

/** What an amount is for. A lead time stands among them, in days: whoever prices a thing says when it comes. */
export const COST_KINDS = ['piece', 'set-up', 'test', 'tooling', 'other', 'lead time'] as const
export type CostKind = (typeof COST_KINDS)[number]

export const COST_PERS = ['board', 'lot', 'once'] as const
export type CostPer = (typeof COST_PERS)[number]

/** How each kind is called, and what it is counted by where nobody says; a lead time is counted by nothing. */
export const COST_KIND_FACTS = {
  piece: { label: 'Piece cost', per: 'board' },
  'set-up': { label: 'Set-up', per: 'lot' },
  test: { label: 'Test', per: 'lot' },
  tooling: { label: 'Tooling', per: 'once' },
  other: { label: 'Other cost', per: 'board' },
  'lead time': { label: 'Lead time', per: null },
} as const satisfies Record<CostKind, { readonly label: string; readonly per: CostPer | null }>

export const PER_IN_WORDS = { board: 'a board', lot: 'a lot', once: 'once' } as const satisfies Record<
  CostPer,
  string
>

/** One amount that somebody names, as it is stored: money in the firm's currency, or days of lead time. */
export interface CostLine {
  readonly kind: CostKind
  /** Null of a lead time. */
  readonly per: CostPer | null
  readonly amount: NonNullable<StoredAmount> | null
}

/** One amount of an answer: for one alternative of the study it was asked in, or, where none is named, for all. */
export interface AnsweredLine extends CostLine {
  readonly alternative: string | null
}

export const amountIn = ({ amount }: Pick<CostLine, 'amount'>): Amount => amountOf(amount)

export const isMoney = <Line extends Pick<CostLine, 'kind'>>(line: Line): boolean => line.kind !== 'lead time'

/** What a line is counted by: as said, or as its kind usually is. */
export const perOf = (kind: CostKind, said: CostPer | null | undefined): CostPer | null =>
  kind === 'lead time' ? null : (said ?? COST_KIND_FACTS[kind].per)

/** A row of amounts to fill in. An amount left empty is not known. */
export const COST_COLUMNS = {
  kind: choiceColumn({
    label: 'What',
    options: COST_KINDS.map((value) => ({
      value,
      label: value === 'lead time' ? 'Lead time, in days' : COST_KIND_FACTS[value].label,
    })),
  }),
  per: optionalColumn(
    choiceColumn({
      label: 'For',
      options: [
        { value: 'board', label: 'each board' },
        { value: 'lot', label: 'each lot' },
        { value: 'once', label: 'once' },
      ],
    }),
  ),
  amount: optionalColumn(textColumn({ label: 'Amount', maxLength: 40, figures: true })),
} as const

/** A row of an answer's amounts as it is read: for one alternative of the study it was asked in, or for all. */
export const ANSWER_COLUMNS = {
  ...COST_COLUMNS,
  alternative: optionalColumn(textColumn({ label: 'Alternative', maxLength: 60 })),
} as const

/** The same as it is filled in: the alternatives to choose from, where there are any. */
export const answerColumns = (alternatives: readonly string[]) =>
  alternatives.length === 0
    ? COST_COLUMNS
    : {
        ...COST_COLUMNS,
        alternative: optionalColumn(
          choiceColumn({
            label: 'Alternative',
            options: alternatives.map((value) => ({ value, label: value })),
          }),
        ),
      }
