import { annualVolume } from '@/shared/plan/parameters/programme'
import { decimalText, decimalTyped } from '@/shared/quantity/decimal-typed'
import type { DecimalSign } from '@/shared/quantity/notation'

/** Over how many boards costs are compared. */
export interface CostQuestion {
  readonly boardsAYear: number
  readonly years: number
  readonly boards: number
  /** Undefined where nobody says: what a lot costs cannot be spread over its boards then. */
  readonly boardsPerLot: number | undefined
}

/**
 * The question in the page's address. It starts from the boards per year that
 * are specified, for one year: nothing says for how long the board is made.
 */
export function costQuestion(
  asked: { boards?: string; years?: string; lot?: string },
  values: ReadonlyMap<string, unknown>,
  decimal: DecimalSign,
): { typed: { boards: string; years: string; lot: string }; question?: CostQuestion; problem?: string } {
  const specified = values.get(annualVolume.key)
  const typed = {
    boards: asked.boards?.trim() || (typeof specified === 'number' ? decimalText(specified, decimal) : ''),
    years: asked.years?.trim() || '1',
    lot: asked.lot?.trim() ?? '',
  }
  if (!typed.boards)
    return { typed, problem: `Say how many boards per year; ${annualVolume.label} is not specified yet.` }
  const boardsAYear = decimalTyped(typed.boards, decimal) ?? NaN
  const years = decimalTyped(typed.years, decimal) ?? NaN
  if (!(boardsAYear >= 1 && boardsAYear <= 1e7))
    return { typed, problem: 'Boards per year lie between 1 and 10 000 000.' }
  if (!(years > 0 && years <= 60)) return { typed, problem: 'Production years lie between 0 and 60.' }
  const boardsPerLot = typed.lot ? (decimalTyped(typed.lot, decimal) ?? NaN) : undefined
  if (boardsPerLot !== undefined && !(boardsPerLot >= 1 && boardsPerLot <= 1e7))
    return { typed, problem: 'Boards in a lot lie between 1 and 10 000 000.' }
  return {
    typed,
    question: { boardsAYear, years, boards: Math.max(1, boardsAYear * years), boardsPerLot },
  }
}
