import {
  ACCOUNT_FROM_ORIGIN,
  oneMoreFailure,
  ORIGIN,
  secondsBlocked,
  failuresLeft,
  type Failures,
  type Slowing,
} from '@/lib/auth/slowing-down'
import { database } from '@/lib/db/client'
import { inTransaction, type Transaction } from '@/lib/db/transaction'
import { nativeSha256 } from '@/lib/trail/native-sha256'

/** What a try is counted for, and how it is slowed down. */
interface Count {
  readonly subject: string
  readonly slowing: Slowing
  /** Holds nobody up who entered the account that the first count is for from there before. */
  readonly sparesKnown?: boolean
}

interface Row {
  readonly key: string
  readonly failures: number
  readonly lastFailure: Date
  readonly blockedUntil: Date | null
  readonly lastSuccess: Date | null
}

/** How long entering an account from somewhere makes it known from there. */
const KNOWN_FOR_MS = 90 * 24 * 60 * 60 * 1000

/**
 * What a sign-in is counted for. Only the origin that fails is slowed down, so that nobody locks anybody out from
 * elsewhere.
 */
export const signInCounts = (address: string, origin: string): readonly Count[] => [
  { subject: `account ${address} from ${origin}`, slowing: ACCOUNT_FROM_ORIGIN },
  { subject: `origin ${origin}`, slowing: ORIGIN, sparesKnown: true },
]

/** What a password asked for again is counted for: a stolen session blocks no other. */
export const signatureCounts = (personId: string, sessionId = 'none'): readonly Count[] => [
  { subject: `person ${personId} in session ${sessionId}`, slowing: ACCOUNT_FROM_ORIGIN },
]

type Admission =
  | { readonly admitted: false; readonly waitS: number }
  | { readonly admitted: true; readonly counted: readonly Count[] }

/**
 * Admits one more try at a password, counted as failed until `countSuccess` says otherwise, so that tries sent
 * side by side all count; one that has to wait counts for nothing. The counts stand in the database: all instances
 * share them, and a restart forgives nobody.
 */
export const admitTry = (counts: readonly Count[], now: Date): Promise<Admission> =>
  inTransaction(async (tx) => {
    const all = await lockRows(tx, counts, now)
    const nowMs = now.getTime()
    const enteredMs = all[0]?.row.lastSuccess?.getTime()
    const isKnown = enteredMs !== undefined && nowMs - enteredMs < KNOWN_FOR_MS
    const held = all.filter(({ count }) => !(isKnown && count.sparesKnown))
    const waitS = Math.max(...held.map(({ row }) => secondsBlocked(failuresIn(row), nowMs)))
    if (waitS > 0) return { admitted: false, waitS }
    for (const { count, row } of held)
      await store(tx, row, oneMoreFailure(failuresIn(row), nowMs, count.slowing))
    return { admitted: true, counted: held.map(({ count }) => count) }
  })

/** After a success: the account is free of failures from there, and the others of the one counted for this try. */
export const countSuccess = (counted: readonly Count[], now: Date): Promise<void> =>
  inTransaction(async (tx) => {
    const nowMs = now.getTime()
    const [account, ...others] = await lockRows(tx, counted, now)
    if (account) await store(tx, account.row, { count: 0, atMs: nowMs }, now)
    for (const { count, row } of others) {
      const left = failuresLeft(failuresIn(row), nowMs, count.slowing) - 1
      await store(tx, row, { count: Math.max(0, left), atMs: nowMs })
    }
  })

/** Removes counts that say nothing any more. */
export async function sweepCounts(now: Date): Promise<void> {
  const before = new Date(now.getTime() - KNOWN_FOR_MS)
  const dayBefore = new Date(now.getTime() - 24 * 60 * 60 * 1000)
  await database().signInThrottle.deleteMany({
    where: { lastFailure: { lt: dayBefore }, OR: [{ lastSuccess: null }, { lastSuccess: { lt: before } }] },
  })
}

/** Each count with its row, made where there was none; locked in the order of their keys, so that no two wait for each other. */
async function lockRows(tx: Transaction, counts: readonly Count[], now: Date) {
  const keys = counts.map(({ subject }) => keyOf(subject)).sort()
  await tx.signInThrottle.createMany({
    data: keys.map((key) => ({ key, failures: 0, lastFailure: now })),
    skipDuplicates: true,
  })
  const rows = await tx.$queryRaw<Row[]>`
    SELECT * FROM "SignInThrottle" WHERE "key" = ANY(${keys}) ORDER BY "key" FOR UPDATE`
  return counts.flatMap((count) => {
    const row = rows.find(({ key }) => key === keyOf(count.subject))
    return row ? [{ count, row }] : []
  })
}

const failuresIn = ({ failures, lastFailure, blockedUntil }: Row): Failures => ({
  count: failures,
  atMs: lastFailure.getTime(),
  ...(blockedUntil ? { blockedUntilMs: blockedUntil.getTime() } : {}),
})

const store = (
  tx: Transaction,
  { key }: Row,
  { count, atMs, blockedUntilMs }: Failures,
  lastSuccess?: Date,
) =>
  tx.signInThrottle.update({
    where: { key },
    data: {
      failures: count,
      lastFailure: new Date(atMs),
      blockedUntil: blockedUntilMs === undefined ? null : new Date(blockedUntilMs),
      ...(lastSuccess ? { lastSuccess } : {}),
    },
  })

/** The address itself is not kept: whoever tries one need not exist here. */
const keyOf = (subject: string): string => nativeSha256(`password tries ${subject}`)
