import { setTimeout as wait } from 'node:timers/promises'

const LONGEST_MS = 3_000
const AGAIN_AFTER_MS = 100

/**
 * Makes a check again and again for three seconds before its refusal counts: an app that was just
 * stopped or killed may need a moment to let go of what it held.
 */
export async function patiently(check: () => void | Promise<void>): Promise<void> {
  const until = performance.now() + LONGEST_MS
  for (;;) {
    try {
      return await check()
    } catch (error) {
      if (performance.now() > until) throw error
      await wait(AGAIN_AFTER_MS)
    }
  }
}
