import type { Visitor } from '@/lib/auth/visitor'
import { log } from '@/lib/log/log'

interface SignInEvent {
  readonly personId?: string
  /** Why it was not taken; absent when it was. */
  readonly refused?: string
  /** By which way; by default by password. */
  readonly by?: 'identity provider'
  readonly waitS?: number
}

/**
 * A line in the log for each sign-in and each refusal. What was typed stays out of it: people type passwords into
 * the field for the address.
 */
export function noteSignIn({ address }: Visitor, { refused, by, ...rest }: SignInEvent): void {
  const fields = { from: address, by: by ?? 'password', ...rest }
  if (refused === undefined) log.info('Somebody signed in.', { event: 'sign-in', ...fields })
  else log.warn('A sign-in was refused.', { event: 'sign-in-refused', reason: refused, ...fields })
}

/** A password asked for again, by somebody signed in, that was not taken. */
export function noteProofRefused(personId: string, reason: string): void {
  log.warn('A password asked for again was refused.', { event: 'proof-refused', personId, reason })
}

/** The end of a session by its person. */
export function noteSignOut(personId: string): void {
  log.info('Somebody signed out.', { event: 'sign-out', personId })
}
