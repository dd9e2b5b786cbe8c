import { z } from 'zod'

/**
 * What an archive of an installation is made of: a gzipped tar (POSIX.1-2001) of `begin.json`, each table as PostgreSQL's
 * own COPY text under `tables/`, each file of evidence by its SHA-256 under `evidence/`, and `end.json`. Without its end it
 * was broken off.
 */
export const FORMAT = 'liquidus-backup-1'

export const BEGIN = 'begin.json'
export const END = 'end.json'
export const TABLES = 'tables/'
export const EVIDENCE = 'evidence/'

/** Of which version the rows are, and in which order the tables come: what a row refers to comes before it. */
export const beginSchema = z.strictObject({
  format: z.literal(FORMAT),
  migrations: z.array(z.strictObject({ name: z.string(), checksum: z.string() })).min(1),
  tables: z.array(z.strictObject({ name: z.string(), columns: z.array(z.string()).min(1) })),
})
export type Begin = z.output<typeof beginSchema>

/** How much of everything there was. */
export const endSchema = z.strictObject({
  rows: z.record(z.string(), z.number().int().nonnegative()),
  files: z.number().int().nonnegative(),
  /** The newest hash of each trail. */
  heads: z.record(z.string(), z.string()),
})
export type End = z.output<typeof endSchema>
