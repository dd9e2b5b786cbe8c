import type { RowReader } from '@/lib/db/row-reader'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'

export interface NamedTrail {
  readonly id: string
  /** The programme's code; what is left of the name where the programme is gone. */
  readonly code: string
}

/**
 * Every trail there should be: of the installation, of each programme, and of what was a programme
 * once, as its chain or an earlier verification remembers. One that is not there any more is broken.
 */
export async function allTrails(reader: RowReader): Promise<readonly NamedTrail[]> {
  const rows = await reader.rows<{ id: string; code: string | null }>(
    `SELECT known."id", programme."code" FROM (
       SELECT "id" FROM "Trail" UNION SELECT "trailId" FROM "Verification" UNION SELECT "id"::text FROM "Programme"
     ) AS known LEFT JOIN "Programme" AS programme ON programme."id"::text = known."id"
     ORDER BY known."id" <> $1, programme."code", known."id"`,
    [INSTALLATION_TRAIL],
  )
  return rows.map(({ id, code }) => ({
    id,
    code: code ?? (id === INSTALLATION_TRAIL ? id : `programme ${id}, which is gone`),
  }))
}
