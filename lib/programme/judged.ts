import { LRUCache } from 'lru-cache'
import { database } from '@/lib/db/client'
import { inSnapshot } from '@/lib/db/transaction'
import { installationMark } from '@/lib/programme/installation-mark'
import { judgeAndLog } from '@/lib/programme/judge-and-log'
import { loadState } from '@/lib/programme/load-state'
import { shareUnchanged } from '@/lib/programme/share-unchanged'
import { worksMarkOf, worksMarks } from '@/lib/programme/works/works-mark'
import { dateAtWorks } from '@/lib/settings/works'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import type { Judgement } from '@/shared/gate/judgement'
import type { ProgrammeState } from '@/shared/gate/programme-state'

/** A programme's facts and all that follows from them, as of one trail entry. */
export interface JudgedProgramme {
  readonly state: ProgrammeState
  readonly judgement: Judgement
  readonly head: { readonly seq: number; readonly hash: string }
  /** Names the facts: it differs as soon as anything that they rest on has another entry, or it is another day. */
  readonly asOf: string
}

/**
 * Nothing changes a fact without an entry in a trail, so the newest hashes of the
 * programme's trail and of the trails of the works that it rests on, and the
 * installation's mark, name the facts exactly: they and the date are the key of this cache.
 */
interface Kept {
  readonly key: string
  readonly judged: Promise<JudgedProgramme>
}
const MAX_KEPT = 200
const kept = new LRUCache<string, Kept>({ max: MAX_KEPT })

/** The programme as it stands; undefined when there is none of that code. */
export async function judgedProgramme(code: string, now = new Date()): Promise<JudgedProgramme | undefined> {
  const today = dateAtWorks(now)
  const asked = database().$queryRaw<ProgrammeHead[]>`
    SELECT p."id"::text AS "id", t."seq", t."headHash" AS "hash"
    FROM "Programme" p JOIN "Trail" t ON t."id" = p."id"::text WHERE p."code" = ${code}`
  const [[row], installation, works] = await Promise.all([asked, installationMark(), worksMarkOf(code)])
  return row && judgedAt(row, { installation, works }, today)
}

/** Where a programme's trail ends. */
export interface ProgrammeHead {
  readonly id: string
  readonly seq: number
  readonly hash: string
}

/** The same for several programmes at once, whose heads were read together; in their order. */
export async function judgedProgrammes(
  heads: readonly ProgrammeHead[],
  today: string,
): Promise<JudgedProgramme[]> {
  const [installation, works] = await Promise.all([installationMark(), worksMarks(heads.map(({ id }) => id))])
  return Promise.all(
    heads.map((head) => judgedAt(head, { installation, works: works.get(head.id) ?? '' }, today)),
  )
}

interface Marks {
  readonly installation: string
  readonly works: string
}

function judgedAt(
  { id, seq, hash }: ProgrammeHead,
  { installation, works }: Marks,
  today: string,
): Promise<JudgedProgramme> {
  const head = { seq, hash }
  const key = `${hash} ${installation} ${works} ${today}`
  const known = kept.get(id)
  if (known?.key === key) return known.judged
  const judged = judgeAgain(id, head, today, nativeSha256(key), known?.judged)
  kept.set(id, { key, judged })
  judged.catch(() => {
    if (kept.peek(id)?.judged === judged) kept.delete(id)
  })
  return judged
}

async function judgeAgain(
  id: string,
  head: { seq: number; hash: string },
  today: string,
  asOf: string,
  earlier: Promise<JudgedProgramme> | undefined,
): Promise<JudgedProgramme> {
  const before = await earlier?.catch(() => undefined)
  const loaded = await inSnapshot((tx) => loadState(tx, id, today))
  const state = shareUnchanged(before?.state, loaded)
  return { state, judgement: judgeAndLog(state, before?.judgement), head, asOf }
}
