import { rowSchema } from '@/shared/columns/column-schema'
import type { Column } from '@/shared/columns/column'
import { futureDates } from '@/shared/records/future-dates'
import { Refused } from '@/shared/refused'

/**
 * A row's cells as their columns take them. Refused at the box, named under `prefix`, that cannot be taken; `place`
 * says before the sentence which of several rows it is.
 */
export function parsedCells(
  columns: Readonly<Record<string, Column>>,
  cells: Readonly<Record<string, unknown>>,
  today: string,
  prefix: string,
  place = '',
): Record<string, unknown> {
  const parsed = rowSchema(columns).safeParse(cells)
  const problems = parsed.success
    ? futureDates(columns, parsed.data, today).map((name) => ({
        name,
        message: `${columns[name]!.label}: this day lies in the future.`,
      }))
    : parsed.error.issues.map(({ path, message }) => ({ name: path.join('.'), message: message }))
  if (parsed.success && problems.length === 0) return parsed.data
  const fields = Object.fromEntries(problems.map(({ name, message }) => [`${prefix}.${name}`, message]))
  throw new Refused(`${place}${Object.values(fields)[0] ?? 'It cannot be read.'}`, fields)
}
