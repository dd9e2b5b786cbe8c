import { oneTimePasswordIsOver } from '@/lib/auth/one-time-password'
import { hashPassword, LONGEST_PASSWORD, passwordMatches } from '@/lib/auth/password'
import { admitTry, forgetFailures } from '@/lib/auth/throttle'
import { database } from '@/lib/db/client'

export type Checked =
  | { readonly ok: true; readonly personId: string; readonly credentialEpoch: number }
  | { readonly ok: false; readonly says: string }

const NOT_RIGHT = 'The address or the password is not right.'

const ONE_TIME_PASSWORD_OVER = 'This one-time password has expired. Ask an administrator for a new one.'

/** A hash nobody has: an unknown address takes as long as a wrong password. */
let nobody: Promise<string> | undefined

/** Checks an address and its password. A wrong one and an unknown one are told alike. */
export async function checkPassword(email: string, password: string, now = new Date()): Promise<Checked> {
  const address = email.trim().toLowerCase()
  // The database refuses to look for U+0000, which no address holds.
  if (!address || address.includes('\0')) return { ok: false, says: NOT_RIGHT }
  if (!password || password.length > LONGEST_PASSWORD) return { ok: false, says: NOT_RIGHT }
  const wait = await admitTry(address, now)
  if (wait > 0) return { ok: false, says: `Too many tries. Wait ${wait} seconds before the next one.` }
  const person = await database().person.findUnique({ where: { email: address } })
  const right = await passwordMatches(
    password,
    person?.passwordHash ?? (await (nobody ??= hashPassword('nobody at all'))),
  )
  if (!right || !person?.passwordHash || person.disabledAt) return { ok: false, says: NOT_RIGHT }
  if (oneTimePasswordIsOver(person, now)) return { ok: false, says: ONE_TIME_PASSWORD_OVER }
  await forgetFailures(address)
  return { ok: true, personId: person.id, credentialEpoch: person.credentialEpoch }
}
