/**
 * The new value, with every part that equals the old one replaced by the old
 * object: what did not change keeps its identity. Plain data and Maps only.
 */
export function shareUnchanged<T>(before: T | undefined, now: T): T {
  if (Object.is(before, now) || before === undefined || before === null || now === null) return now
  if (typeof before !== 'object' || typeof now !== 'object') return now
  if (now instanceof Map) return before instanceof Map ? (shareMap(before, now) as T) : now
  if (Array.isArray(now)) return Array.isArray(before) ? (shareArray(before, now) as T) : now
  return shareObject(before as Record<string, unknown>, now as Record<string, unknown>) as T
}

function shareArray(before: readonly unknown[], now: readonly unknown[]): readonly unknown[] {
  const shared = now.map((entry, index) => shareUnchanged(before[index], entry))
  return before.length === now.length && shared.every((entry, index) => Object.is(entry, before[index]))
    ? before
    : shared
}

function shareMap(
  before: ReadonlyMap<unknown, unknown>,
  now: ReadonlyMap<unknown, unknown>,
): ReadonlyMap<unknown, unknown> {
  const shared = new Map([...now].map(([key, entry]) => [key, shareUnchanged(before.get(key), entry)]))
  return before.size === now.size &&
    [...shared].every(([key, entry]) => before.has(key) && Object.is(entry, before.get(key)))
    ? before
    : shared
}

function shareObject(before: Record<string, unknown>, now: Record<string, unknown>): Record<string, unknown> {
  const keys = Object.keys(now)
  const shared = Object.fromEntries(keys.map((key) => [key, shareUnchanged(before[key], now[key])]))
  const same =
    Object.keys(before).length === keys.length &&
    keys.every((key) => key in before && Object.is(shared[key], before[key]))
  return same ? before : shared
}
