import type { Client } from 'pg'
import { database } from '@/lib/db/client'

/** Answers a statement with its rows, in PostgreSQL's own types as JavaScript has them. */
export interface RowReader {
  rows<Row extends object>(statement: string, parameters?: readonly unknown[]): Promise<Row[]>
}

/** Reads over the app's connections, each statement as things stand at its moment. */
export const eachAtItsMoment: RowReader = {
  rows: (statement, parameters = []) => database().$queryRawUnsafe(statement, ...parameters),
}

/** Reads over one plain connection. */
export const readerOver = (client: Client): RowReader => ({
  rows: async <Row extends object>(statement: string, parameters: readonly unknown[] = []) =>
    (await client.query<Row>(statement, [...parameters])).rows,
})
