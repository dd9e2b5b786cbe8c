import { v7 } from 'uuid'
import { SESSION_SECONDS, type SessionClaims } from '@/lib/auth/session-claims'
import type { Visitor } from '@/lib/auth/visitor'
import { database } from '@/lib/db/client'
import type { Person } from '@/lib/db/generated/client'
import { log } from '@/lib/log/log'
import { settings } from '@/lib/settings/settings'

/** A session as its person sees it. */
export interface SessionRow {
  readonly id: string
  readonly startedAt: Date
  readonly lastSeenAt: Date
  readonly browser: string
  readonly address: string
}

/** Being seen is written down no more often: to a request it would be one more statement each time. */
const SEEN_EVERY_MS = 60_000

/** Opens a session on the server, and answers what its cookie shall say. */
export async function openSession(
  { personId, credentialEpoch, signedInAt }: Omit<SessionClaims, 'sessionId'>,
  { address, userAgent }: Visitor,
  now = new Date(),
): Promise<SessionClaims> {
  const sessionId = v7()
  await database().session.create({
    data: {
      id: sessionId,
      personId,
      credentialEpoch,
      startedAt: new Date(signedInAt * 1000),
      lastSeenAt: now,
      browser: userAgent.replaceAll('\0', ''),
      address,
    },
  })
  return { personId, sessionId, credentialEpoch, signedInAt }
}

/**
 * The person of a session that still lasts, read in one statement, and seen now. Undefined when it was ended, when
 * nothing was asked in it for too long, or when the person's password or rights have changed or their access ended.
 */
export async function personOfSession(
  { sessionId, personId, credentialEpoch }: SessionClaims,
  now = new Date(),
): Promise<Person | undefined> {
  const [row] = await database().$queryRaw<(Person & { lastSeenAt: Date })[]>`
    SELECT "Person".*, "Session"."lastSeenAt"
    FROM "Session" JOIN "Person" ON "Person"."id" = "Session"."personId"
    WHERE "Session"."id" = ${sessionId}::uuid
      AND "Person"."id" = ${personId}::uuid
      AND "Person"."credentialEpoch" = ${credentialEpoch}
      AND "Person"."disabledAt" IS NULL`
  if (!row) return undefined
  const { lastSeenAt, ...person } = row
  if (lastSeenAt <= idleSince(now)) return undefined
  if (now.getTime() - lastSeenAt.getTime() >= SEEN_EVERY_MS) await seen(sessionId, now)
  return person
}

/** Ends a session; whoever has a copy of its cookie has nothing. */
export async function endSessionOf(personId: string, sessionId: string): Promise<void> {
  await database().session.deleteMany({ where: { id: sessionId, personId } })
}

/** The person's sessions that still last, the one seen last first. */
export const sessionsOf = (personId: string, now = new Date()): Promise<SessionRow[]> =>
  database().$queryRaw<SessionRow[]>`
    SELECT "Session"."id", "startedAt", "lastSeenAt", "browser", "address"
    FROM "Session" JOIN "Person" ON "Person"."id" = "Session"."personId"
    WHERE "Person"."id" = ${personId}::uuid
      AND "Person"."credentialEpoch" = "Session"."credentialEpoch"
      AND "lastSeenAt" > ${idleSince(now)} AND "startedAt" > ${longestAgo(now)}
    ORDER BY "lastSeenAt" DESC, "Session"."id"`

/** Removes the rows of sessions that are over by themselves. */
export async function sweepSessions(now: Date): Promise<void> {
  await database().session.deleteMany({
    where: { OR: [{ lastSeenAt: { lte: idleSince(now) } }, { startedAt: { lte: longestAgo(now) } }] },
  })
}

const longestAgo = (now: Date): Date => new Date(now.getTime() - SESSION_SECONDS * 1000)
const idleSince = (now: Date): Date => new Date(now.getTime() - settings().idleMinutes * 60_000)

/** A page is shown even where that it was asked for cannot be written down. */
async function seen(sessionId: string, now: Date): Promise<void> {
  try {
    await database().session.updateMany({ where: { id: sessionId }, data: { lastSeenAt: now } })
  } catch (error) {
    log.error('That a session was seen could not be written down.', { error })
  }
}
