import type { Column } from '@/shared/columns/column'
import { kindOf } from '@/shared/columns/column-kinds'
import type { Notation } from '@/shared/quantity/notation'

/**
 * Cells copied from a spreadsheet: lines of cells parted by tabs, undefined
 * for a text that is one cell only. Its own heading line is left out.
 */
export function spreadsheetCells(
  text: string,
  columns: Readonly<Record<string, Column>>,
): string[][] | undefined {
  const body = text.replace(/\r\n?/g, '\n').replace(/\n$/, '')
  if (!/[\t\n]/.test(body)) return undefined
  const lines = body.split('\n').map((line) => line.split('\t').map((cell) => cell.trim()))
  const labels = new Set(Object.values(columns).map(({ label }) => label.toLowerCase()))
  const isHeading = lines[0]?.every((cell) => labels.has(cell.toLowerCase())) ?? false
  return isHeading ? lines.slice(1) : lines
}

/** What a pasted text is in a column's box, as its kind reads it; empty when it is nothing that can be chosen there. */
export const pastedInto = (column: Column, text: string, notation: Notation): string =>
  kindOf(column).fromSpreadsheet(column, text, notation)
