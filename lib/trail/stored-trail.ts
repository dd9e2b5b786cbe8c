import type { RowReader } from '@/lib/db/row-reader'
import { isUuid } from '@/lib/queries/from-address'
import { WORKS_TABLES } from '@/lib/trail/works-tables'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import type { BundleGate } from '@/shared/trail/bundle'
import type { TrailEntry } from '@/shared/trail/entry'
import type { TrailEnd } from '@/shared/trail/trail-end'
import type { TrailKind } from '@/shared/works/works-kind'

const ENTRIES_AT_ONCE = 200
/** The largest number that the column holds. */
const LAST_ENTRY = 2_147_483_647

/**
 * All entries of a trail in order, or those up to a number, read piece by piece so that a long
 * one never lies in memory whole.
 */
export async function* trailEntries(
  reader: RowReader,
  trailId: string,
  upTo = LAST_ENTRY,
): AsyncGenerator<TrailEntry[]> {
  for (let after = 0; ;) {
    const entries = await reader.rows<TrailEntry>(
      `SELECT "trailId", "seq", "at", "actorId", "actorName", "command", "payload", "previousHash", "hash"
       FROM "TrailEntry" WHERE "trailId" = $1 AND "seq" > $2 AND "seq" <= $3 ORDER BY "seq" LIMIT $4`,
      [trailId, after, upTo, ENTRIES_AT_ONCE],
    )
    if (entries.length === 0) return
    yield entries
    after = entries.at(-1)?.seq ?? after
    if (entries.length < ENTRIES_AT_ONCE) return
  }
}

/** What a trail is about; of a programme, where nothing says any more. */
export async function kindOfTrail(reader: RowReader, trailId: string): Promise<TrailKind> {
  if (trailId === INSTALLATION_TRAIL) return 'installation'
  if (!isUuid(trailId)) return 'programme'
  const things = Object.entries(WORKS_TABLES).map(
    ([kind, table]) => `UNION ALL SELECT '${kind}' FROM "${table}" WHERE "id" = $1::uuid`,
  )
  const [row] = await reader.rows<{ kind: TrailKind }>(
    `SELECT "kind" FROM "TrailSubject" WHERE "id" = $1::uuid ${things.join(' ')} LIMIT 1`,
    [trailId],
  )
  return row?.kind ?? 'programme'
}

/** Where the trail says that it ends. */
export async function trailEnd(reader: RowReader, trailId: string): Promise<TrailEnd> {
  const [row] = await reader.rows<{ seq: number; headHash: string }>(
    'SELECT "seq", "headHash" FROM "Trail" WHERE "id" = $1',
    [trailId],
  )
  return { seq: row?.seq ?? 0, hash: row?.headHash ?? '' }
}

interface SignatureRow {
  stage: string
  department: string
  at: Date
  trailSeq: number
  merkleRoot: string
  headHash: string
}

/**
 * The seals that the gates' signatures are, or those signed by entries up to a number; the
 * installation's own trail, which is no programme's, has none.
 */
export async function gatesOf(reader: RowReader, trailId: string, upTo = LAST_ENTRY): Promise<BundleGate[]> {
  if (!isUuid(trailId)) return []
  const rows = await reader.rows<SignatureRow>(
    `SELECT "stage", "department", "at", "trailSeq", "merkleRoot", "headHash"
     FROM "GateSignature" WHERE "programmeId" = $1::uuid AND "trailSeq" < $2 ORDER BY "trailSeq", "at", "id"`,
    [trailId, upTo],
  )
  return rows.map(({ stage, department, at, trailSeq, merkleRoot, headHash }) => ({
    stage: `${stage} (${department})`,
    signedAt: at.toISOString(),
    seq: trailSeq,
    merkleRoot,
    headHash,
  }))
}
