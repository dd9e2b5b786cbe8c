import { entryLabel, entryTold, recordedIn } from '@/shared/commands/entry-told'
import type { ItemState } from '@/shared/gate/item-status'
import { limitsBehind, parametersBehind } from '@/shared/gate/signed-content'
import type { TrailEntry } from '@/shared/trail/entry'

type Entry = Pick<TrailEntry, 'command' | 'payload' | 'actorName'>

const MOST_TOLD = 3

/**
 * What entries of the trail did to an item, a sentence each: those that name the
 * item, a value or a limit behind it; where none does, the newest of the others,
 * since a finding turned through one of them.
 */
export function touching(itemState: ItemState, entries: readonly Entry[]): string[] {
  const direct = entries.filter((entry) => names(recordedIn(entry.payload), itemState))
  const told = (direct.length > 0 ? direct : entries).slice(-MOST_TOLD).map(sentence)
  return told.length > 0 ? told : ['The day has changed, and with it what is in force.']
}

function names(payload: unknown, { item }: ItemState): boolean {
  if (typeof payload !== 'object' || payload === null) return false
  const { parameter, limit, item: key, itemKey, revisions } = payload as Readonly<Record<string, unknown>>
  const own = item.definition.key
  if (key === own || itemKey === own) return true
  const parameters = parametersBehind(item)
  const revised = Array.isArray(revisions)
    ? revisions.map((entry) => (entry as { parameter?: unknown }).parameter)
    : []
  return (
    [parameter, ...revised].some((name) => parameters.some((behind) => behind === name)) ||
    limitsBehind(item).some((behind) => behind.key === limit)
  )
}

function sentence(entry: Entry): string {
  const told = entryTold(entry)
  const what = told ? `: ${[told.subject, told.what].filter(Boolean).join(', ')}` : ''
  return `${entryLabel(entry.command)}${what} (${entry.actorName}).`
}
