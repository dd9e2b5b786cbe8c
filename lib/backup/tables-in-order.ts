import type { Client } from 'pg'
import type { Begin } from '@/lib/backup/archive-parts'

type Table = Begin['tables'][number]

/** Kept by the migrations themselves. */
const BOOKKEEPING = '_prisma_migrations'

/**
 * Every table with its columns, each after those that its rows refer to; one that refers to itself is no obstacle, for its
 * rows are put in by one statement. Throws where tables refer to each other in a circle.
 */
export async function tablesInOrder(client: Client): Promise<Table[]> {
  const tables = await client.query<Table>(
    `SELECT c.relname AS "name", array_agg(a.attname::text ORDER BY a.attnum) AS "columns"
     FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = ''
     WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND c.relname <> $1
     GROUP BY c.relname ORDER BY c.relname`,
    [BOOKKEEPING],
  )
  const references = await client.query<{ from: string; to: string }>(
    `SELECT own.relname AS "from", other.relname AS "to"
     FROM pg_constraint k JOIN pg_class own ON own.oid = k.conrelid JOIN pg_class other ON other.oid = k.confrelid
     WHERE k.contype = 'f' AND k.conrelid <> k.confrelid AND k.connamespace = 'public'::regnamespace`,
  )
  const left = new Map(tables.rows.map((table) => [table.name, table]))
  const ordered: Table[] = []
  while (left.size > 0) {
    const free = [...left.values()].filter(
      ({ name }) => !references.rows.some(({ from, to }) => from === name && left.has(to)),
    )
    if (free.length === 0) throw new Error(`Tables refer to each other: ${[...left.keys()].join(', ')}.`)
    for (const table of free) left.delete(table.name)
    ordered.push(...free)
  }
  return ordered
}

/** A name as SQL writes it. */
export const quoted = (name: string): string => `"${name.replaceAll('"', '""')}"`

/** `"Table" ("one", "two")`, as COPY names what it copies. */
export const copied = ({ name, columns }: Table): string =>
  `${quoted(name)} (${columns.map(quoted).join(', ')})`
