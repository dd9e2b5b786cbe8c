import { z } from 'zod'
import type { Unit } from '@/shared/quantity/unit'
import { columnSchema, rowSchema, type Column, type RowOf } from '@/shared/columns/column'
import type { Department } from './department'

/** One specified value: what it is called, who owns it, and what it may hold. */
export interface Parameter<T = unknown> {
  readonly source: 'parameter'
  readonly key: string
  readonly label: string
  readonly help: string
  readonly owner: Department
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
}

/** A number with unit and bounds. */
export function numberParameter(
  described: Described & { unit: Unit; min: number; max: number; whole?: boolean },
): Parameter<number> {
  const { key, label, help, owner, unit, min, max, whole = false } = described
  const column: Column = { kind: 'number', label, unit, min, max, whole, optional: false }
  return {
    source: 'parameter',
    key,
    label,
    help,
    owner,
    shape: { kind: 'field', column },
    schema: columnSchema(column) as z.ZodType<number>,
  }
}

/** One of a closed list. */
export function choiceParameter<const C extends string>(
  described: Described & { options: readonly { value: C; label: string }[] },
): Parameter<C> {
  const { key, label, help, owner, options } = described
  const column: Column = { kind: 'choice', label, options, optional: false }
  return {
    source: 'parameter',
    key,
    label,
    help,
    owner,
    shape: { kind: 'field', column },
    schema: columnSchema(column) as z.ZodType<C>,
  }
}

/** Yes or no. */
export function flagParameter(described: Described): Parameter<boolean> {
  const { key, label, help, owner } = described
  const column: Column = { kind: 'flag', label, optional: false }
  return {
    source: 'parameter',
    key,
    label,
    help,
    owner,
    shape: { kind: 'field', column },
    schema: columnSchema(column) as z.ZodType<boolean>,
  }
}

/** A line or paragraph of text. */
export function textParameter(described: Described & { maxLength?: number }): Parameter<string> {
  const { key, label, help, owner, maxLength = 500 } = described
  const column: Column = { kind: 'text', label, maxLength, optional: false }
  return {
    source: 'parameter',
    key,
    label,
    help,
    owner,
    shape: { kind: 'field', column },
    schema: columnSchema(column) as z.ZodType<string>,
  }
}

/** A table with typed columns: a hole table, a list of component leads. */
export function tableParameter<const C extends Record<string, Column>>(
  described: Described & { columns: C; maxRows?: number },
): Parameter<readonly RowOf<C>[]> {
  const { key, label, help, owner, columns, maxRows = 200 } = described
  const schema = z
    .array(rowSchema(columns))
    .min(1, `${label} needs at least one row.`)
    .max(maxRows, `${label} holds at most ${maxRows} rows.`)
  return {
    source: 'parameter',
    key,
    label,
    help,
    owner,
    shape: { kind: 'table', columns, maxRows },
    schema: schema as unknown as z.ZodType<readonly RowOf<C>[]>,
  }
}

/** The value type of a parameter. */
export type ValueOf<P> = P extends Parameter<infer T> ? T : never
