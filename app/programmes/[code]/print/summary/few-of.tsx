import type { ReactNode } from 'react'

/** The first so many rows, and a line that says how many the pack holds beside them: two sheets take no more. */
export function fewOf<Row>(rows: readonly Row[], most: number): { shown: readonly Row[]; rest: ReactNode } {
  const left = rows.length - most
  return {
    shown: rows.slice(0, most),
    rest: left > 0 ? <p className="faint">And {left} more in the print pack.</p> : null,
  }
}
