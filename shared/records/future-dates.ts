import type { Column } from '@/shared/columns/column'

/** The columns of a record, by name, whose day lies after today though what is recorded must have happened. 'YYYY-MM-DD'. */
export const futureDates = (
  columns: Readonly<Record<string, Column>>,
  row: Readonly<Record<string, unknown>>,
  today: string,
): string[] =>
  Object.entries(columns).flatMap(([name, column]) => {
    const day = row[name]
    return column.kind === 'date' && !column.mayLieAhead && typeof day === 'string' && day > today
      ? [name]
      : []
  })
