import { inHashLine, LINE_EASES_AFTER_S, LineIsFull, type Turn } from '@/lib/auth/hash-line'
import { oneTimePasswordIsOver } from '@/lib/auth/one-time-password'
import { LONGEST_PASSWORD, NOBODYS_HASH, passwordMatches } from '@/lib/auth/password'
import { noteSignIn } from '@/lib/auth/sign-in-log'
import { admitTry, countSuccess, signInCounts } from '@/lib/auth/throttle'
import type { Visitor } from '@/lib/auth/visitor'
import { database } from '@/lib/db/client'

export type Checked =
  | { readonly ok: true; readonly personId: string; readonly credentialEpoch: number }
  | {
      readonly ok: false
      readonly message: string
      /** Seconds until another try is looked at, where this one was not. */
      readonly retryAfterS?: number
    }

const NOT_RIGHT = 'The address or the password is not right.'

const ONE_TIME_PASSWORD_OVER = 'This one-time password has expired. Ask an administrator for a new one.'

/**
 * Checks an address and its password. A wrong one, an unknown one and one that may not sign in are told alike, and
 * after the same work. Everything, the database's part too, waits for its turn: a flood reaches nothing.
 */
export async function checkPassword(
  { email, password }: { email: string; password: string },
  visitor: Visitor,
  now = new Date(),
): Promise<Checked> {
  const address = email.trim().toLowerCase()
  try {
    const place = { who: 'signing in', shareOf: `origin ${visitor.origin}` } as const
    return isReadable(address, password)
      ? await inHashLine(place, (turn) => checkInTurn(turn, address, password, visitor, now))
      : refused('not right', visitor)
  } catch (error) {
    if (!(error instanceof LineIsFull)) throw error
    noteSignIn(visitor, { refused: 'no place in the line' })
    return { ok: false, message: error.message, retryAfterS: LINE_EASES_AFTER_S }
  }
}

/** The database refuses to look for U+0000, which no address holds. */
const isReadable = (address: string, password: string): boolean =>
  address !== '' && !address.includes('\0') && password !== '' && password.length <= LONGEST_PASSWORD

async function checkInTurn(
  turn: Turn,
  address: string,
  password: string,
  visitor: Visitor,
  now: Date,
): Promise<Checked> {
  const admission = await admitTry(signInCounts(address, visitor.origin), now)
  if (!admission.admitted) {
    noteSignIn(visitor, { refused: 'too many tries', waitS: admission.waitS })
    const message = `Too many tries from where you are. Wait ${admission.waitS} seconds before the next one.`
    return { ok: false, message, retryAfterS: admission.waitS }
  }
  const person = await database().person.findUnique({ where: { email: address } })
  const right = await passwordMatches(turn, password, person?.passwordHash ?? NOBODYS_HASH)
  if (!person) return refused('unknown address', visitor)
  if (!right || !person.passwordHash) return refused('not right', visitor, person.id)
  if (person.disabledAt) return refused('access ended', visitor, person.id)
  if (oneTimePasswordIsOver(person, now)) {
    noteSignIn(visitor, { refused: 'one-time password expired', personId: person.id })
    return { ok: false, message: ONE_TIME_PASSWORD_OVER }
  }
  await countSuccess(admission.counted, now)
  return { ok: true, personId: person.id, credentialEpoch: person.credentialEpoch }
}

function refused(why: string, visitor: Visitor, personId?: string): Checked {
  noteSignIn(visitor, { refused: why, ...(personId ? { personId } : {}) })
  return { ok: false, message: NOT_RIGHT }
}
