/** How tries at a password are slowed down after failures. */
export interface Slowing {
  /** So many failures cost nothing: people mistype. */
  readonly free: number
  /** The wait after the next one, in seconds; it doubles with each further one. */
  readonly firstWaitS: number
  readonly longestWaitS: number
  /** Failures count half after so many seconds. */
  readonly halfLifeS: number
}

/** Failures as they stood at a moment, epoch milliseconds. */
export interface Failures {
  readonly count: number
  readonly atMs: number
  readonly blockedUntilMs?: number
}

/**
 * For one account from one origin. A machine that never stops gets about 90 tries in its first day and 80 in later
 * ones; NIST SP 800-63B (section 5.2.2) asks for no more than 100 failures in a row.
 */
export const ACCOUNT_FROM_ORIGIN: Slowing = {
  free: 4,
  firstWaitS: 30,
  longestWaitS: 30 * 60,
  halfLifeS: 2 * 60 * 60,
}

/**
 * For one origin over all accounts: a whole office may share an address, and its people mistype too. Common practice,
 * no published source.
 */
export const ORIGIN: Slowing = { free: 30, firstWaitS: 5, longestWaitS: 5 * 60, halfLifeS: 60 * 60 }

/** What is left of the failures at a later moment. A clock that was set back takes nothing away. */
export const failuresLeft = ({ count, atMs }: Failures, nowMs: number, { halfLifeS }: Slowing): number =>
  count * 0.5 ** (Math.max(0, nowMs - atMs) / 1000 / halfLifeS)

/** Seconds to wait after so many failures. */
export const waitAfter = (count: number, { free, firstWaitS, longestWaitS }: Slowing): number =>
  count <= free ? 0 : Math.min(firstWaitS * 2 ** (count - free - 1), longestWaitS)

/** Seconds until another try is admitted; 0 when it is now. */
export const secondsBlocked = ({ blockedUntilMs }: Failures, nowMs: number): number =>
  blockedUntilMs === undefined ? 0 : Math.max(0, Math.ceil((blockedUntilMs - nowMs) / 1000))

/** The failures after one more. */
export function oneMoreFailure(before: Failures, nowMs: number, slowing: Slowing): Failures {
  const count = failuresLeft(before, nowMs, slowing) + 1
  const waitS = waitAfter(count, slowing)
  return { count, atMs: nowMs, ...(waitS > 0 ? { blockedUntilMs: nowMs + waitS * 1000 } : {}) }
}
