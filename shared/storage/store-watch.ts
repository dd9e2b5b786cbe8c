import { daysBetween } from '@/shared/quantity/calendar'
import { foldedList } from '@/shared/quantity/folded-names'
import type { Lot } from '@/shared/records/lot'
import type { SolderingRun } from '@/shared/records/soldering-work'
import type { Part } from '@/shared/rules/finding'
import { count } from '@/shared/rules/measure'
import { codeKey, lotsUsed } from './storage-time'

/** The days of a lot in store. */
export interface Stay {
  readonly lot: Lot
  readonly from: string
  /** Its last soldering; today while no run names it. */
  readonly to: string
}

/** How long boards and components lay in store; coupons are tested, not kept. */
export function staysInStore(lots: readonly Lot[], runs: readonly SolderingRun[], today: string): Stay[] {
  const soldered = new Map(lotsUsed(runs).map(({ code, days }) => [codeKey(code), days.at(-1)!]))
  return lots
    .filter(({ kind }) => kind === 'bare board' || kind === 'component')
    .map((lot) => ({ lot, from: lot.receivedOn, to: soldered.get(codeKey(lot.code)) ?? today }))
}

/**
 * The first stretch of a stay in which nobody read the climate of the store for
 * longer than that; all of it where nobody did. Days of readings ascend.
 */
export function unreadStretch(
  { from, to }: Pick<Stay, 'from' | 'to'>,
  readOn: readonly string[],
  maxDays: number,
): { readonly from: string; readonly to: string } | undefined {
  const during = readOn.filter((day) => from <= day && day <= to)
  const before = readOn.findLast((day) => day < from)
  const isReadBefore = before !== undefined && daysBetween(before, from) <= maxDays
  if (during.length === 0 && !isReadBefore) return { from, to }
  let since = from
  for (const day of [...during, to]) {
    if (daysBetween(since, day) > maxDays) return { from: since, to: day }
    since = day
  }
  return undefined
}

/** What is stated at receipt says nothing of the months after it: the store is read while lots wait. */
export function watchPart(stays: readonly Stay[], readOn: readonly string[], maxDays: number): Part[] {
  if (stays.length === 0) return []
  const named = { subject: 'A log of the store while lots wait', about: { matter: 'log of the store' } }
  const unread = stays.flatMap((stay) => {
    const stretch = unreadStretch(stay, readOn, maxDays)
    return stretch ? [{ code: stay.lot.code, ...stretch }] : []
  })
  const first = unread.reduce<(typeof unread)[number] | undefined>(
    (one, other) => (one && one.from <= other.from ? one : other),
    undefined,
  )
  if (!first)
    return [
      {
        ...named,
        verdict: 'meets',
        measured: { daysRead: count(readOn.length, 'days'), lots: count(stays.length) },
        found: `read on ${readOn.length} days, often enough for ${stays.length} lots.`,
      },
    ]
  const lotCodes = unread.map(({ code }) => code)
  return [
    {
      ...named,
      verdict: 'undetermined',
      measured: { unreadFrom: first.from, unreadTo: first.to, lots: lotCodes },
      found: `not read from ${first.from} to ${first.to} while ${foldedList(lotCodes)} waited: how a lot was received is not how it was kept.`,
      remedy: {
        message: `Record the readings that were taken; from now on read the store every ${maxDays} days at least while lots wait. Where none was taken, quality decides what the lots are worth.`,
      },
    },
  ]
}
