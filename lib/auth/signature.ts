import { inHashLine, LineIsFull, type Turn } from '@/lib/auth/hash-line'
import { passwordMatches } from '@/lib/auth/password'
import { noteProofRefused } from '@/lib/auth/sign-in-log'
import { admitTry, countSuccess, signatureCounts } from '@/lib/auth/throttle'
import { database } from '@/lib/db/client'
import { Refused } from '@/shared/refused'

/** What shows that the person signing is the person signed in. */
export interface SignatureProof {
  readonly password?: string
  /** For people of an identity provider: when they last signed in there, epoch seconds. */
  readonly freshSignInAt?: number
  /** Wrong passwords are counted for the session they were typed in: a stolen one blocks no other. */
  readonly sessionId?: string
}

/** A sign-in at the identity provider counts as fresh for so long. */
const FRESH_FOR_S = 5 * 60

/**
 * Refuses unless the password is right, or the sign-in at the identity provider is fresh. People signing go
 * before people signing in.
 */
export async function verifySignature(
  personId: string,
  proof: SignatureProof | undefined,
  now = new Date(),
): Promise<void> {
  const person = await database().person.findUnique({
    where: { id: personId },
    select: { passwordHash: true },
  })
  const stored = person?.passwordHash
  if (!stored) return verifyFreshness(proof, now)
  const { password, sessionId } = proof ?? {}
  if (!password) throw passwordRefusal('Type your password to sign.', 'Type your password to sign.')
  const counts = signatureCounts(personId, sessionId)
  try {
    await inHashLine({ who: 'signed in', shareOf: `person ${personId}` }, (turn) =>
      verifyInTurn(turn, { counts, password, stored }, now),
    )
  } catch (error) {
    if (error instanceof Refused) noteProofRefused(personId, error.message)
    if (error instanceof LineIsFull)
      throw passwordRefusal(`${error.message} Nothing was signed.`, 'Try again.')
    throw error
  }
}

async function verifyInTurn(
  turn: Turn,
  { counts, password, stored }: { counts: Parameters<typeof admitTry>[0]; password: string; stored: string },
  now: Date,
): Promise<void> {
  const admission = await admitTry(counts, now)
  if (!admission.admitted) {
    const says = `Too many wrong passwords. Try again in ${admission.waitS} seconds.`
    throw passwordRefusal(says, 'Wait before you try again.')
  }
  if (!(await passwordMatches(turn, password, stored)))
    throw passwordRefusal('The password is not right. Nothing was signed.', 'The password is not right.')
  await countSuccess(admission.counted, now)
}

const passwordRefusal = (says: string, atField: string): Refused => new Refused(says, { password: atField })

function verifyFreshness(proof: SignatureProof | undefined, now: Date): void {
  const age = now.getTime() / 1000 - (proof?.freshSignInAt ?? 0)
  if (age > FRESH_FOR_S)
    throw passwordRefusal(
      'Sign in again at your identity provider, then sign within five minutes.',
      'A fresh sign-in is needed.',
    )
}
