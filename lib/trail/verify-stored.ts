import { setImmediate as nextTurn } from 'node:timers/promises'
import { openSnapshot, type Snapshot } from '@/lib/db/read-snapshot'
import { installedStore } from '@/lib/evidence/installed-store'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { fileState, registeredFiles } from '@/lib/trail/stored-files'
import { storedRows } from '@/lib/trail/stored-rows'
import { gatesOf, kindOfTrail, trailEnd, trailEntries } from '@/lib/trail/stored-trail'
import { isUuid } from '@/lib/queries/from-address'
import { gateSeals } from '@/shared/trail/bundle'
import type { FileState, RegisteredFile } from '@/shared/stored/compare-files'
import { StoredComparison } from '@/shared/stored/stored-comparison'
import { storedVerdict, type StoredVerdict } from '@/shared/stored/stored-verdict'
import type { TrailEntry } from '@/shared/trail/entry'
import { worksHeadsIn } from '@/shared/trail/works-head'
import { fallenHeads, type NamedHead } from '@/lib/trail/works-heads-stand'
import { trailVerifier, type TrailVerdict } from '@/shared/trail/verify'

const LONGEST_WORK_MS = 20

/** How far a verification has come; the last step is what it found. */
export type VerificationStep =
  | { readonly doing: 'entries' | 'files'; readonly done: number; readonly of: number }
  | { readonly verdict: StoredVerdict }

/** What was found of files before, for a run over several trails: a file that two programmes name is read once. */
export type FilesSeen = Map<string, FileState>

/**
 * Verifies a stored trail: the chain against itself, its gates' seals and where it says it ends;
 * the rows that its entries made; the files that they name. Chain and rows are read as they were at one
 * moment, so that work going on meanwhile is no break; files are only ever added.
 */
export async function* verifyStored(
  trailId: string,
  seen: FilesSeen = new Map(),
): AsyncGenerator<VerificationStep> {
  const snapshot = await openSnapshot()
  let chain: TrailVerdict
  let registered: ReadonlyMap<string, RegisteredFile>
  const comparison = new StoredComparison(nativeSha256, await kindOfTrail(snapshot, trailId))
  try {
    const heads: NamedHead[] = []
    chain = yield* verifyChain(snapshot, trailId, comparison, heads)
    comparison.takeBreaks(await fallenHeads(snapshot, heads))
    await compareTables(snapshot, trailId, comparison)
    registered = await registeredFiles(snapshot, [...comparison.files().keys()])
  } finally {
    await snapshot.close()
  }
  yield* verifyFiles(comparison, registered, seen)
  yield { verdict: storedVerdict(chain, comparison.finish()) }
}

/** The verdict alone; throws between two steps when it is told to stop. */
export async function verdictOnStored(
  trailId: string,
  seen?: FilesSeen,
  stopping?: AbortSignal,
): Promise<StoredVerdict> {
  for await (const step of verifyStored(trailId, seen)) {
    stopping?.throwIfAborted()
    if ('verdict' in step) return step.verdict
  }
  throw new Error('The verification ended without a verdict.')
}

async function* verifyChain(
  snapshot: Snapshot,
  trailId: string,
  comparison: StoredComparison,
  heads: NamedHead[],
): AsyncGenerator<VerificationStep, TrailVerdict> {
  const end = await trailEnd(snapshot, trailId)
  const verifier = trailVerifier(nativeSha256, gateSeals(await gatesOf(snapshot, trailId)))
  const breathe = breather()
  let done = 0
  for await (const entries of trailEntries(snapshot, trailId)) {
    for (const entry of entries) {
      verifier.add(entry)
      comparison.takeEntry(entry)
      heads.push(...headsNamedBy(entry))
      await breathe()
    }
    done += entries.length
    yield { doing: 'entries', done, of: end.seq }
  }
  return verifier.finish(end)
}

/** What an entry cannot be read to say is told by the comparison of its rows. */
function headsNamedBy(entry: TrailEntry): NamedHead[] {
  try {
    return worksHeadsIn(entry).map((head) => ({ ...head, inEntry: entry.seq }))
  } catch {
    return []
  }
}

async function compareTables(
  snapshot: Snapshot,
  trailId: string,
  comparison: StoredComparison,
): Promise<void> {
  const owner = isUuid(trailId) ? trailId : undefined
  for (const table of comparison.tables()) {
    // A trail that is named by no id can have no rows of its own.
    if (trailId === INSTALLATION_TRAIL || owner !== undefined)
      for await (const rows of storedRows(snapshot, table, owner)) comparison.takeRows(table, rows)
    comparison.endTable(table)
  }
}

async function* verifyFiles(
  comparison: StoredComparison,
  registered: ReadonlyMap<string, RegisteredFile>,
  seen: FilesSeen,
): AsyncGenerator<VerificationStep> {
  const store = await installedStore()
  const hashes = [...comparison.files().keys()]
  for (const [index, sha256] of hashes.entries()) {
    const state = seen.get(sha256) ?? (await fileState(store, sha256))
    seen.set(sha256, state)
    comparison.takeFile(sha256, registered.get(sha256), state)
    yield { doing: 'files', done: index + 1, of: hashes.length }
  }
}

/** An entry may hold thousands of rows: after a while of work, others of this process get their turn. */
function breather(): () => Promise<void> | undefined {
  let began = performance.now()
  return () => {
    if (performance.now() - began < LONGEST_WORK_MS) return undefined
    return nextTurn().then(() => {
      began = performance.now()
    })
  }
}
