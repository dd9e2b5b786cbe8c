import { passwordMatches } from '@/lib/auth/password'
import { admitTry, forgetFailures } from '@/lib/auth/throttle'
import { database } from '@/lib/db/client'
import { Refused } from '@/shared/refused'

/** What shows that the person signing is the person signed in. */
export interface SignatureProof {
  readonly password?: string
  /** For people of an identity provider: when they last signed in there, epoch seconds. */
  readonly freshSignInAt?: number
}

/** A sign-in at the identity provider counts as fresh for so long. */
const FRESH_FOR_S = 5 * 60

/** Refuses unless the password is right, or the sign-in at the identity provider is fresh. */
export async function verifySignature(
  personId: string,
  proof: SignatureProof | undefined,
  now = new Date(),
): Promise<void> {
  const person = await database().person.findUnique({
    where: { id: personId },
    select: { passwordHash: true },
  })
  if (!person?.passwordHash) return verifyFreshness(proof, now)
  if (!proof?.password)
    throw new Refused('Type your password to sign.', { password: 'Type your password to sign.' })
  const wait = await admitTry(personId, now)
  if (wait > 0) {
    throw new Refused(`Too many wrong passwords. Try again in ${wait} seconds.`, {
      password: 'Wait before you try again.',
    })
  }
  if (!(await passwordMatches(proof.password, person.passwordHash))) {
    throw new Refused('The password is not right. Nothing was signed.', {
      password: 'The password is not right.',
    })
  }
  await forgetFailures(personId)
}

function verifyFreshness(proof: SignatureProof | undefined, now: Date): void {
  const age = now.getTime() / 1000 - (proof?.freshSignInAt ?? 0)
  if (age > FRESH_FOR_S) {
    throw new Refused('Sign in again at your identity provider, then sign within five minutes.', {
      password: 'A fresh sign-in is needed.',
    })
  }
}
