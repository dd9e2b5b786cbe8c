import type { RowReader } from '@/lib/db/row-reader'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import { WORKS_TABLES } from '@/lib/trail/works-tables'
import { worksSubjectName, type TrailKind } from '@/shared/works/works-kind'

export interface NamedTrail {
  readonly id: string
  /** The programme's code, or what of the works it is about; what is left of the name where that is gone. */
  readonly code: string
}

/**
 * Every trail there should be: of the installation, of each programme and of everything of the works, and of what was
 * one of them once, as its chain or an earlier verification remembers. One that is not there any more is broken.
 */
export async function allTrails(reader: RowReader): Promise<readonly NamedTrail[]> {
  const rows = await reader.rows<{ id: string; kind: TrailKind | null; code: string | null }>(
    `SELECT known."id", subject."kind", subject."code" FROM (
       SELECT "id" FROM "Trail" UNION SELECT "trailId" FROM "Verification"
       ${['Programme', ...Object.values(WORKS_TABLES)].map((table) => `UNION SELECT "id"::text FROM "${table}"`).join(' ')}
     ) AS known LEFT JOIN "TrailSubject" AS subject ON subject."id"::text = known."id"
     ORDER BY known."id" <> $1, subject."kind" <> 'programme', subject."kind", subject."code", known."id"`,
    [INSTALLATION_TRAIL],
  )
  return rows.map(({ id, kind, code }) => ({ id, code: nameOf(id, kind, code) }))
}

function nameOf(id: string, kind: TrailKind | null, code: string | null): string {
  if (id === INSTALLATION_TRAIL) return id
  if (kind === null || kind === 'installation' || code === null) return `trail ${id}, whose subject is gone`
  return kind === 'programme' ? code : worksSubjectName({ kind, code })
}
