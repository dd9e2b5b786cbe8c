import type { TrailSearch } from '@/lib/queries/trail'

/** Another page of the same search. */
export function trailPageAddress(
  at: string,
  { command, actorId, text, from, until }: TrailSearch,
  page: number,
): string {
  const wanted = Object.entries({
    what: command,
    who: actorId,
    text,
    from,
    until,
    page: String(page),
  }).filter(([, value]) => value)
  return `${at}?${new URLSearchParams(wanted)}`
}
