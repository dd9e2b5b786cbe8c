import { decimalTyped } from '@/shared/quantity/decimal-typed'
import type { Proposal } from '@/shared/rules/proposal'

/** What the address asks of an item's page: a form to open, and a value to fill in there. */
export interface Asked {
  readonly revise?: string
  readonly value?: string
  readonly cell?: string
  /** An archive of board files that a table is filled in from. */
  readonly board?: string
  /** 'parts': it is filled in from the parts list. */
  readonly from?: string
}

/** The proposal in the address for this parameter, if there is one that can be read. */
export function proposalAsked({ revise, value, cell }: Asked, parameter: string): Proposal | undefined {
  if (revise !== parameter || value === undefined || !value.trim()) return undefined
  const number = decimalTyped(value)
  if (number === undefined) return undefined
  if (cell === undefined) return { parameter, value: number }
  const [, row, column] = /^(\d{1,4})\.(\w{1,60})$/.exec(cell) ?? []
  return row && column ? { parameter, value: number, cell: { row: Number(row), column } } : undefined
}
