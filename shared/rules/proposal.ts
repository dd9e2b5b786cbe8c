import type { Remedy } from './finding'

/** The one value a remedy would have set: a parameter's own, or that of one cell of its table. */
export interface Proposal {
  readonly parameter: string
  readonly value: number
  readonly cell?: { readonly row: number; readonly column: string }
}

/** What a remedy proposes as a value; undefined when it says its piece in words only. */
export function proposalOf(remedy: Remedy | undefined): Proposal | undefined {
  if (!remedy) return undefined
  if (remedy.cell) {
    const { parameter, value, row, column } = remedy.cell
    return { parameter, value, cell: { row, column } }
  }
  const { parameter, value } = remedy
  return parameter !== undefined && value !== undefined ? { parameter, value } : undefined
}

/** A parameter's value with a proposal carried out; a cell that is not there leaves the table as it is. */
export function withProposal(current: unknown, { value, cell }: Proposal): unknown {
  if (!cell) return value
  const rows = Array.isArray(current) ? (current as readonly Readonly<Record<string, unknown>>[]) : []
  return rows.map((row, position) => (position === cell.row ? { ...row, [cell.column]: value } : row))
}
