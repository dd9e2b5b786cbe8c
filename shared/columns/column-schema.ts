import { z } from 'zod'
import type { Column, RowOf } from './column'
import type { SchemaMaker } from './column-kind'
import { kindOf } from './column-kinds'

const MAKE: SchemaMaker = {
  number: z.number,
  string: z.string,
  enum: z.enum,
  boolean: z.boolean,
  union: z.union,
}

/** The zod schema of one column; its messages are sentences for the person typing. */
export function columnSchema(column: Column): z.ZodType {
  const schema = kindOf(column).schema(MAKE, column)
  return column.optional ? schema.optional() : schema
}

/** The zod schema of a whole row; unknown fields are refused. */
export const rowSchema = <C extends Record<string, Column>>(columns: C): z.ZodType<RowOf<C>> =>
  z.strictObject(
    Object.fromEntries(Object.entries(columns).map(([key, column]) => [key, columnSchema(column)])),
  ) as unknown as z.ZodType<RowOf<C>>
