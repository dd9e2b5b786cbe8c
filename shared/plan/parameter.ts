import { z } from 'zod'
import type { Unit } from '@/shared/quantity/unit'
import {
  choiceColumn,
  dateColumn,
  flagColumn,
  numberColumn,
  textColumn,
  type Column,
  type RowOf,
} from '@/shared/columns/column'
import { columnSchema, rowSchema } from '@/shared/columns/column-schema'
import type { Department } from './department'

/** One specified value: what it is called, who owns it, and what it may hold. */
export interface Parameter<T = unknown> {
  readonly source: 'parameter'
  readonly key: string
  readonly label: string
  readonly help: string
  readonly owner: Department
  /**
   * It came into an item that programmes had agreed already: it may stay empty,
   * and while it is empty no signed content speaks of it.
   */
  readonly addedLater?: true
  readonly shape: ParameterShape
  /** Parses a value; its messages are sentences for the person typing. */
  readonly schema: z.ZodType<T>
}

/** How a parameter is asked for and printed. */
export type ParameterShape =
  | { readonly kind: 'field'; readonly column: Column }
  | { readonly kind: 'table'; readonly columns: Record<string, Column>; readonly maxRows: number }

interface Described {
  key: string
  label: string
  help: string
  owner: Department
  addedLater?: true
}

const heldBy = ({ key, label, help, owner, addedLater }: Described) => ({
  source: 'parameter' as const,
  key,
  label,
  help,
  owner,
  ...(addedLater && { addedLater }),
})

/** One value, held as a column of a table holds it. */
const fieldParameter = <T>(described: Described, column: Column): Parameter<T> => ({
  ...heldBy(described),
  shape: { kind: 'field', column },
  schema: columnSchema(column) as z.ZodType<T>,
})

/** A number with unit and bounds. */
export const numberParameter = (
  described: Described & { unit: Unit; min: number; max: number; whole?: boolean },
): Parameter<number> => {
  const { label, unit, min, max, whole = false } = described
  return fieldParameter(described, numberColumn({ label, unit, min, max, whole }))
}

/** One of a closed list. */
export const choiceParameter = <const C extends string>(
  described: Described & { options: readonly { value: C; label: string }[] },
): Parameter<C> =>
  fieldParameter(described, choiceColumn({ label: described.label, options: described.options }))

/** Yes or no. */
export const flagParameter = (described: Described): Parameter<boolean> =>
  fieldParameter(described, flagColumn({ label: described.label }))

/** A calendar date, one to come among them. */
export const dateParameter = (described: Described): Parameter<string> =>
  fieldParameter(described, dateColumn({ label: described.label, mayLieAhead: true }))

/** A line or paragraph of text. */
export const textParameter = (described: Described & { maxLength?: number }): Parameter<string> =>
  fieldParameter(described, textColumn({ label: described.label, maxLength: described.maxLength ?? 500 }))

/** A table with typed columns: a hole table, a list of component leads. */
export function tableParameter<const C extends Record<string, Column>>(
  described: Described & { columns: C; maxRows?: number },
): Parameter<readonly RowOf<C>[]> {
  const { label, columns, maxRows = 200 } = described
  const schema = z
    .array(rowSchema(columns))
    .min(1, `${label} needs at least one row.`)
    .max(maxRows, `${label} holds at most ${maxRows} rows.`)
  return {
    ...heldBy(described),
    shape: { kind: 'table', columns, maxRows },
    schema: schema as unknown as z.ZodType<readonly RowOf<C>[]>,
  }
}

/** The value type of a parameter. */
export type ValueOf<P> = P extends Parameter<infer T> ? T : never
