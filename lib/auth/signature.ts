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

/** What the password is asked for, in the words of the refusals. */
const PURPOSES = {
  sign: { ask: 'Type your password to sign.', undone: ' Nothing was signed.' },
  'change password': { ask: 'Type the password you have now.', undone: '' },
} as const

interface Occasion {
  readonly purpose?: keyof typeof PURPOSES
  readonly now?: Date
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
  { purpose = 'sign', now = new Date() }: Occasion = {},
): Promise<void> {
  const { ask, undone } = PURPOSES[purpose]
  const person = await database().person.findUnique({
    where: { id: personId },
    select: { passwordHash: true },
  })
  const stored = person?.passwordHash
  if (!stored) return verifyFreshness(proof, now)
  const { password, sessionId } = proof ?? {}
  if (!password) throw passwordRefusal(ask, ask)
  const counts = signatureCounts(personId, sessionId)
  try {
    await inHashLine({ who: 'signed in', shareOf: `person ${personId}` }, (turn) =>
      verifyInTurn(turn, { counts, password, stored, undone }, now),
    )
  } catch (error) {
    if (error instanceof Refused) noteProofRefused(personId, error.message)
    if (error instanceof LineIsFull) throw passwordRefusal(`${error.message}${undone}`, 'Try again.')
    throw error
  }
}

interface PasswordTry {
  readonly counts: Parameters<typeof admitTry>[0]
  readonly password: string
  readonly stored: string
  readonly undone: string
}

async function verifyInTurn(
  turn: Turn,
  { counts, password, stored, undone }: PasswordTry,
  now: Date,
): Promise<void> {
  const admission = await admitTry(counts, now)
  if (!admission.admitted) {
    const message = `Too many wrong passwords. Try again in ${admission.waitS} seconds.`
    throw passwordRefusal(message, 'Wait before you try again.')
  }
  if (!(await passwordMatches(turn, password, stored)))
    throw passwordRefusal(`The password is not right.${undone}`, 'The password is not right.')
  await countSuccess(admission.counted, now)
}

const passwordRefusal = (message: string, atField: string): Refused =>
  new Refused(message, { password: atField })

function verifyFreshness(proof: SignatureProof | undefined, now: Date): void {
  const age = now.getTime() / 1000 - (proof?.freshSignInAt ?? 0)
  if (age > FRESH_FOR_S)
    throw passwordRefusal(
      'Sign in again at your identity provider, then sign within five minutes.',
      'A fresh sign-in is needed.',
    )
}
