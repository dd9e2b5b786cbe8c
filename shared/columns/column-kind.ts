import type { z } from 'zod'
import type { Notation } from '@/shared/quantity/notation'
import type { Unit } from '@/shared/quantity/unit'
import type { Cell, Column } from './column'

/**
 * All that is done with columns of one kind. C is how such a column is
 * declared. Values are given as they are stored and never empty; a new kind
 * says every one of these, and the compiler asks for the pieces that lie
 * elsewhere: its boxes (app/forms/columns/), its CSV field (lib/readings/) and
 * any value of it for the tests.
 */
export interface ColumnKind<C extends Column> {
  /** The schema of a cell that must be filled in; its messages are sentences for the person typing. */
  schema(make: SchemaMaker, column: C): z.ZodType
  /**
   * What was typed into its field as the works writes it, null where the form had no such field.
   * Undefined when nothing was typed or chosen; a text that cannot be read
   * stays the text it is, so that the schema's own sentence says so.
   */
  fromTyped(column: C, typed: string | null, notation: Notation): Cell | undefined
  /** A value as its field shows it, which `fromTyped` reads back. */
  toTyped(column: C, value: unknown, notation: Notation): string
  /** What a cell copied from a spreadsheet is in its field; empty when it is nothing that can stand there. */
  fromSpreadsheet(column: C, text: string, notation: Notation): string
  /**
   * Whether a cell of stored readings, which are numbers and text only, is what
   * the schema would take. It is asked of a hundred thousand cells at once.
   */
  readingTest(column: C): (cell: number | string) => boolean
  /** The unit its values are printed with; undefined where they are no numbers. */
  unit(column: C): Unit | undefined
  /** A value in words: with its unit, or by the words of its choice. */
  inWords(column: C, value: unknown): string
  /** The same behind the column's label within a sentence. */
  inSentence(column: C, value: unknown): string
  /** The same where no label stands beside it; empty when it then says nothing. */
  withoutLabel(column: C, value: unknown): string
}

/** The parts of zod that schemas are made with: handed in, so that a form in the browser, which parses nothing, does not carry zod. */
export type SchemaMaker = Pick<typeof z, 'number' | 'string' | 'enum' | 'boolean' | 'union'>
