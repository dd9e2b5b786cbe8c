import { database } from '@/lib/db/client'
import { nativeSha256 } from '@/lib/trail/native-sha256'

const FREE_TRIES = 5
const FIRST_WAIT_S = 30
const LONGEST_WAIT_S = 15 * 60

/** The wait after so many failures in a row: none for the first four, then doubling to a quarter of an hour. */
export const waitAfterFailures = (failures: number): number =>
  failures < FREE_TRIES ? 0 : Math.min(FIRST_WAIT_S * 2 ** (failures - FREE_TRIES), LONGEST_WAIT_S)

/**
 * Admits one more try at a password, counted as failed until `forgetFailures`
 * says otherwise, so that tries sent side by side all count. Answers the
 * seconds to wait instead when there were too many; 0 when admitted.
 */
export async function admitTry(subject: string, now: Date): Promise<number> {
  const key = keyOf(subject)
  const [row] = await database().$queryRaw<{ failures: number }[]>`
    INSERT INTO "SignInThrottle" ("key", "failures", "lastFailure") VALUES (${key}, 1, ${now})
    ON CONFLICT ("key") DO UPDATE SET "failures" = "SignInThrottle"."failures" + 1, "lastFailure" = ${now}
    WHERE "SignInThrottle"."blockedUntil" IS NULL OR "SignInThrottle"."blockedUntil" <= ${now}
    RETURNING "failures"`
  if (!row) return secondsBlocked(key, now)
  const wait = waitAfterFailures(row.failures)
  if (wait > 0) {
    await database().signInThrottle.update({
      where: { key },
      data: { blockedUntil: new Date(now.getTime() + wait * 1000) },
    })
  }
  return 0
}

/** After a success: the next failure is the first again. */
export async function forgetFailures(subject: string): Promise<void> {
  await database().signInThrottle.deleteMany({ where: { key: keyOf(subject) } })
}

async function secondsBlocked(key: string, now: Date): Promise<number> {
  const row = await database().signInThrottle.findUnique({ where: { key } })
  return row?.blockedUntil ? Math.max(1, Math.ceil((row.blockedUntil.getTime() - now.getTime()) / 1000)) : 1
}

/** The address itself is not kept: whoever tries one need not exist here. */
const keyOf = (subject: string): string => nativeSha256(`sign-in ${subject.trim().toLowerCase()}`)
