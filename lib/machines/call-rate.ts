import { LRUCache } from 'lru-cache'

/** How many calls a machine may make at once, and how fast it earns new ones. */
export const CALLS_AT_ONCE = 60
export const CALLS_PER_SECOND = 1
const MAX_KEPT = 10_000

interface Allowance {
  readonly calls: number
  readonly at: number
}

/**
 * Counts the calls of each machine in the memory of this server: a machine gone wild is slowed,
 * and a restart forgives it.
 */
export function callRate(now: () => number) {
  const kept = new LRUCache<string, Allowance>({ max: MAX_KEPT })
  /** Seconds to wait before the next call; 0 when this one is admitted and counted. */
  return (machine: string): number => {
    const at = now()
    const before = kept.get(machine) ?? { calls: CALLS_AT_ONCE, at }
    const earned = (Math.max(0, at - before.at) / 1000) * CALLS_PER_SECOND
    const calls = Math.min(CALLS_AT_ONCE, before.calls + earned)
    if (calls < 1) return Math.ceil((1 - calls) / CALLS_PER_SECOND)
    kept.set(machine, { calls: calls - 1, at })
    return 0
  }
}
