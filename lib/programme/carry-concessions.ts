import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { inTransaction, type Transaction } from '@/lib/db/transaction'
import { log } from '@/lib/log/log'
import { THE_PROGRAM } from '@/lib/programme/the-program'
import { loadState } from '@/lib/programme/load-state'
import { lockTrail, recordEntry } from '@/lib/trail/append-entry'
import { nativeSha256 } from '@/lib/trail/native-sha256'
import { publishHead } from '@/lib/trail/publish-head'
import { dateAtWorks } from '@/lib/settings/works'
import { carriedConcessions } from '@/shared/gate/carried-concessions'
import { judgeProgramme } from '@/shared/gate/judgement'
import type { TrailEntry } from '@/shared/trail/entry'

/**
 * At the start: notes for every concession asked for under an earlier version
 * what its finding found, where today's finding is the one it was asked for. The
 * concession itself stays as it was signed; each programme's trail says what was
 * noted. One whose finding reads otherwise lapses, as it did before, and is looked
 * at again at the next start. Answers how many were carried over.
 */
export async function carryConcessions(now = new Date()): Promise<number> {
  const waiting = await database().concession.findMany({
    where: { findingData: null, permit: { equals: Prisma.DbNull }, refusedAt: null },
    select: { programmeId: true },
    distinct: ['programmeId'],
  })
  let carried = 0
  for (const { programmeId } of waiting) {
    try {
      const done = await inTransaction((tx) => carryIn(tx, programmeId, now))
      if (!done) continue
      carried += done.count
      await publishHead(done.entry)
    } catch (error) {
      // A programme that cannot be judged must not keep the others from starting.
      log.error('The concessions of a programme could not be carried over.', { programmeId, error })
    }
  }
  if (carried > 0) log.info('Concessions were carried over to what their findings found.', { carried })
  return carried
}

interface Carried {
  readonly count: number
  readonly entry: TrailEntry
}

async function carryIn(tx: Transaction, programmeId: string, now: Date): Promise<Carried | undefined> {
  const head = await lockTrail(tx, programmeId)
  if (!head) throw new Error('The programme has no trail.')
  const at = now.toISOString()
  const state = await loadState(tx, programmeId, dateAtWorks(now))
  const carried = carriedConcessions(state.concessions, judgeProgramme(state).findings)
  if (carried.length === 0) return undefined
  for (const { concession, findingData } of carried)
    await tx.concession.update({ where: { id: concession.id }, data: { findingData } })
  const entry = await recordEntry(tx, head, {
    at,
    ...THE_PROGRAM,
    command: 'carry-concessions',
    payload: {
      reason: 'What they were asked for is noted as data, so that another wording does not end them.',
      concessions: carried.map(({ concession, findingData }) => ({
        concession: concession.number,
        item: concession.itemKey,
        rule: concession.rule,
        askedForDigest: concession.findingDigest,
        findingDigest: nativeSha256(findingData),
        findingData: JSON.parse(findingData),
      })),
    },
  })
  return { count: carried.length, entry }
}
