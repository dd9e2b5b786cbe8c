import { randomUUID } from 'node:crypto'
import { Client } from 'pg'
import { urlInUse } from '@/lib/db/url-in-use'
import { coveredTable, type TableName } from '@/shared/stored/covered-tables'

/** Somebody who can write the tables, past the door. */
export class Attacker {
  private constructor(readonly client: Client) {}

  static async enter(): Promise<Attacker> {
    const client = new Client({ connectionString: urlInUse() })
    await client.connect()
    await client.query(`SET TIME ZONE 'UTC'`)
    return new Attacker(client)
  }

  leave = (): Promise<void> => this.client.end()

  async rows<Row extends object>(statement: string, parameters: readonly unknown[] = []): Promise<Row[]> {
    return (await this.client.query<Row>(statement, [...parameters])).rows
  }

  /** Places of the rows of a table that belong to a trail, or of all. */
  async places(table: TableName, trailId?: string): Promise<string[]> {
    const { owner } = coveredTable(table)
    const found = await this.rows<{ place: string }>(
      `SELECT ctid::text AS place FROM "${table}" ${owner ? `WHERE "${owner}" = $1` : ''}`,
      owner ? [trailId] : [],
    )
    return found.map(({ place }) => place)
  }

  /** The type of a column, as PostgreSQL calls it. */
  async typeOf(table: string, column: string): Promise<string> {
    const [found] = await this.rows<{ type: string }>(
      `SELECT udt_name AS type FROM information_schema.columns WHERE table_schema = 'public' AND table_name = $1 AND column_name = $2`,
      [table, column],
    )
    return found?.type ?? ''
  }

  /** Whether another value of a column must be the key of a row of another table. */
  pointsElsewhere = (table: TableName, column: string): boolean => FOREIGN[`${table}.${column}`] !== undefined

  /** Puts another value into one column of one row; answers what puts the old one back. */
  async tamper(table: TableName, column: string, place: string): Promise<() => Promise<void>> {
    const type = await this.typeOf(table, column)
    const [before] = await this.rows<{ text: string | null }>(
      `SELECT "${column}"::text AS text FROM "${table}" WHERE ctid = $1::tid`,
      [place],
    )
    const other = FOREIGN[`${table}.${column}`] ?? OTHER_VALUE[type]?.(`"${column}"`)
    if (other === undefined) throw new Error(`No other value for ${table}.${column} of type ${type}.`)
    const [after] = await this.rows<{ place: string }>(
      `UPDATE "${table}" AS own SET "${column}" = ${other} WHERE ctid = $1::tid RETURNING ctid::text AS place`,
      [place],
    )
    return async () => {
      await this.rows(`UPDATE "${table}" SET "${column}" = $1::${type} WHERE ctid = $2::tid`, [
        before?.text ?? null,
        after?.place,
      ])
    }
  }

  /** A row like another, under a name of its own; answers what takes it away. */
  async add(table: TableName, place: string): Promise<() => Promise<void>> {
    const [added] = await this.rows<{ place: string }>(
      `INSERT INTO "${table}" SELECT (jsonb_populate_record(own, $1::jsonb)).* FROM "${table}" AS own
       WHERE own.ctid = $2::tid RETURNING ctid::text AS place`,
      [JSON.stringify(await this.newName(table)), place],
    )
    return async () => {
      await this.rows(`DELETE FROM "${table}" WHERE ctid = $1::tid`, [added?.place])
    }
  }

  /** Takes a row away where nothing hangs on it; answers what puts it back, undefined where something does. */
  async remove(table: TableName, place: string): Promise<(() => Promise<void>) | undefined> {
    await this.rows(`DROP TABLE IF EXISTS pg_temp.kept, pg_temp.pointing`)
    await this.rows(`CREATE TEMP TABLE pointing AS SELECT "id", "lotTestId", "logId" FROM "ReadingBatch"`)
    await this.rows(`CREATE TEMP TABLE kept AS SELECT * FROM "${table}" WHERE ctid = '${place}'::tid`)
    try {
      await this.rows(`DELETE FROM "${table}" WHERE ctid = $1::tid`, [place])
    } catch {
      return undefined
    }
    return async () => {
      await this.rows(`INSERT INTO "${table}" SELECT * FROM pg_temp.kept`)
      // The database itself lets a batch go on without the test or the log that it points to.
      await this.rows(
        `UPDATE "ReadingBatch" AS own SET "lotTestId" = before."lotTestId", "logId" = before."logId"
         FROM pg_temp.pointing AS before WHERE before."id" = own."id"
         AND (own."lotTestId", own."logId") IS DISTINCT FROM (before."lotTestId", before."logId")`,
      )
    }
  }

  /** Does what the trail's own trigger refuses. */
  async pastTheTrigger(...statements: readonly string[]): Promise<void> {
    await this.rows('ALTER TABLE "TrailEntry" DISABLE TRIGGER USER')
    for (const statement of statements) await this.rows(statement)
    await this.rows('ALTER TABLE "TrailEntry" ENABLE TRIGGER USER')
  }

  private async newName(table: TableName): Promise<object> {
    const [person] = await this.rows<{ id: string }>(
      `SELECT "id" FROM "Person" WHERE "id" NOT IN (SELECT "personId" FROM "Membership") LIMIT 1`,
    )
    const name = randomUUID()
    return {
      ...((await this.typeOf(table, 'id')) ? { id: name } : {}),
      ...(table === 'Membership' || table === 'DigestWish' ? { personId: person?.id } : {}),
      code: name.slice(0, 20),
      key: name,
      number: 9_999,
      tokenHash: name,
      tag: name,
      email: name,
      identity: null,
    }
  }
}

/** Columns that point to another table take another of its rows, or none. */
const FOREIGN: Readonly<Record<string, string>> = {
  'ProgrammeLine.lineId': `(SELECT id FROM "Line" WHERE id <> own."lineId" LIMIT 1)`,
  'Machine.lineId': `(SELECT id FROM "Line" WHERE id <> own."lineId" LIMIT 1)`,
  'Log.machineId': `(SELECT id FROM "Machine" WHERE id <> own."machineId" LIMIT 1)`,
  'LotAllocation.lotId': `(SELECT id FROM "Lot" WHERE id <> own."lotId" AND "trailId" = own."trailId" LIMIT 1)`,
  'LotAllocation.programmeId': `(SELECT id FROM "Programme" WHERE id <> own."programmeId" LIMIT 1)`,
  'LotUse.lotId': `(SELECT id FROM "Lot" WHERE id <> own."lotId" LIMIT 1)`,
  'LotTest.lotId': `(SELECT id FROM "Lot" WHERE id <> own."lotId" AND "trailId" = own."trailId" LIMIT 1)`,
  'ReadingBatch.lotTestId': `CASE WHEN "lotTestId" IS NULL THEN (SELECT id FROM "LotTest" LIMIT 1) END`,
  'ReadingBatch.logId': `CASE WHEN "logId" IS NULL THEN (SELECT id FROM "Log" LIMIT 1) END`,
  'Membership.personId': `(SELECT id FROM "Person" WHERE id NOT IN (SELECT "personId" FROM "Membership") LIMIT 1)`,
}

/** Another value of each type, also where there is none yet. */
const OTHER_VALUE: Readonly<Record<string, (column: string) => string>> = {
  text: (column) => `coalesce(${column}, '') || '!'`,
  uuid: () => 'gen_random_uuid()',
  timestamptz: (column) => `coalesce(${column}, '2026-01-01T00:00:00Z') + interval '1 millisecond'`,
  int4: (column) => `coalesce(${column}, 0) + 1000`,
  float8: (column) => `coalesce(${column}, 0) + 0.001`,
  bool: (column) => `NOT coalesce(${column}, false)`,
  jsonb: () => `'{"forged": true}'`,
  json: () => `'{"count": 1, "columns": {"forged": [1]}}'`,
  _text: (column) => `${column} || '{forged}'::text[]`,
  _uuid: (column) => `${column} || gen_random_uuid()`,
}
