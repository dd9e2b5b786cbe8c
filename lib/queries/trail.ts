import { database } from '@/lib/db/client'
import type { Prisma } from '@/lib/db/generated/client'
import { entriesSaying } from '@/lib/queries/entries-saying'
import { isUuid, pageFromAddress, textFromAddress } from '@/lib/queries/from-address'
import { settings } from '@/lib/settings/settings'
import { addDays } from '@/shared/quantity/calendar'
import { isDate } from '@/shared/quantity/is-date'
import { dayBeginsAt } from '@/shared/quantity/works-clock'
import type { TrailEntry } from '@/shared/trail/entry'

export const ENTRIES_A_PAGE = 40

/** What a reader looks for; empty texts look for everything. */
export interface TrailSearch {
  readonly command: string
  readonly actorId: string
  readonly text: string
  readonly from: string
  readonly until: string
  /** One entry alone, by its number; 0 for any. */
  readonly entry: number
  readonly page: number
}

export interface TrailPage {
  readonly entries: readonly TrailEntry[]
  readonly found: number
  /** Who and what appears in the trail, for the filters. */
  readonly commands: readonly string[]
  readonly actors: readonly { readonly id: string; readonly name: string }[]
}

/** One page of a trail, newest first: four statements whatever its length. */
export async function readTrail(trailId: string, search: TrailSearch): Promise<TrailPage> {
  const where = whereOf(trailId, search)
  const [entries, found, commands, actors] = await Promise.all([
    database().trailEntry.findMany({
      where,
      orderBy: { seq: 'desc' },
      skip: (search.page - 1) * ENTRIES_A_PAGE,
      take: ENTRIES_A_PAGE,
    }),
    database().trailEntry.count({ where }),
    database().trailEntry.groupBy({ by: ['command'], where: { trailId }, orderBy: { command: 'asc' } }),
    database().trailEntry.groupBy({
      by: ['actorId', 'actorName'],
      where: { trailId },
      orderBy: { actorName: 'asc' },
    }),
  ])
  return {
    entries,
    found,
    commands: commands.map(({ command }) => command),
    actors: [
      ...new Map(
        // The plain name comes before the one that somebody signs with while standing in.
        actors.toReversed().map(({ actorId, actorName }) => [actorId, { id: actorId, name: actorName }]),
      ).values(),
    ],
  }
}

const whereOf = (
  trailId: string,
  { command, actorId, text, from, until, entry }: TrailSearch,
): Prisma.TrailEntryWhereInput => ({
  trailId,
  ...(entry > 0 ? { seq: entry } : {}),
  ...(command ? { command } : {}),
  ...(actorId ? { actorId } : {}),
  ...(text ? entriesSaying(text) : {}),
  ...(from || until
    ? {
        at: {
          ...(from ? { gte: dayBegins(from) } : {}),
          ...(until ? { lt: dayBegins(addDays(until, 1)) } : {}),
        },
      }
    : {}),
})

/** A search from an address; what cannot be read is left out. */
export function trailSearchFrom(given: Record<string, string | string[] | undefined>): TrailSearch {
  const text = (name: string): string => textFromAddress(given[name])
  const id = text('who')
  const date = (name: string): string => (isDate(text(name)) ? text(name) : '')
  return {
    command: text('what'),
    actorId: isUuid(id) ? id : '',
    text: text('text'),
    from: date('from'),
    until: date('until'),
    entry: /^\d{1,9}$/.test(text('entry')) ? Number(text('entry')) : 0,
    page: pageFromAddress(given['page']),
  }
}

/** When a day of the works begins, as entries tell instants. */
const dayBegins = (day: string): string => new Date(dayBeginsAt(day, settings().timeZone)).toISOString()
