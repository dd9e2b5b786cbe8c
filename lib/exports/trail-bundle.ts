import { database } from '@/lib/db/client'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import { trailBundle, type BundleGate } from '@/shared/trail/bundle'
import type { TrailEntry } from '@/shared/trail/entry'

const ENTRIES_AT_ONCE = 2_000

/** All entries of a trail in order, read piece by piece so that a long one never lies in memory whole. */
export async function* trailEntries(trailId: string): AsyncGenerator<TrailEntry[]> {
  for (let after = 0; ;) {
    const entries = await database().trailEntry.findMany({
      where: { trailId, seq: { gt: after } },
      orderBy: { seq: 'asc' },
      take: ENTRIES_AT_ONCE,
    })
    if (entries.length === 0) return
    yield entries
    after = entries.at(-1)?.seq ?? after
    if (entries.length < ENTRIES_AT_ONCE) return
  }
}

/** The seals that the gates' signatures are; the installation's own trail has none. */
export async function gatesOf(programmeId: string): Promise<BundleGate[]> {
  if (programmeId === INSTALLATION_TRAIL) return []
  const rows = await database().gateSignature.findMany({
    where: { programmeId },
    orderBy: { trailSeq: 'asc' },
  })
  return rows.map(({ stage, department, at, trailSeq, merkleRoot, headHash }) => ({
    stage: `${stage} (${department})`,
    signedAt: at.toISOString(),
    seq: trailSeq,
    merkleRoot,
    headHash,
  }))
}

/** A programme's trail as the text of a bundle, piece by piece. */
export async function* bundleText(
  programme: { id: string; code: string; title: string },
  exportedAt: string,
): AsyncGenerator<string> {
  const { code, title } = programme
  const shell = JSON.stringify(
    trailBundle({ exportedAt, programme: { code, title }, entries: [], gates: await gatesOf(programme.id) }),
  )
  const opening = '"entries":['
  const cut = shell.indexOf(opening) + opening.length
  yield shell.slice(0, cut)
  let first = true
  for await (const entries of trailEntries(programme.id)) {
    yield `${first ? '' : ','}\n${entries.map((entry) => JSON.stringify(entry)).join(',\n')}`
    first = false
  }
  yield shell.slice(cut)
}
