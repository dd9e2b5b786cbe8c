import type { Disposition, Lot } from './lot'
import { groupedBy } from '@/shared/grouped-by'
import { memo, memoByText } from '@/shared/memo'

/** A part's name as it is compared: spaces and capitals do not tell two parts apart. */
export const partKey = memoByText(
  // Rules compare the same few names for every lot.
  10_000,
  (part: string) => part,
  (part) => part.trim().replace(/\s+/g, ' ').toLowerCase(),
)

/** A part within its kind, as it is compared: a board and a component may share a name. */
export const kindAndPart = ({ kind, part }: { readonly kind: string; readonly part: string }): string =>
  `${kind}\n${partKey(part)}`

/** Parts that some lot has come in of. */
export const partsDelivered = memo(
  (lots: readonly Lot[]): ReadonlySet<string> => new Set(lots.map(kindAndPart)),
)

/** One supplier's deliveries of one part: what an inspection history is kept for. */
export const deliveryKey = (lot: Lot): string => `${kindAndPart(lot)}\n${partKey(lot.supplier)}`

/** Lots of one delivery key, earliest received first; ties by code, so that the order never wavers. */
export const deliveries = memo((lots: readonly Lot[]): ReadonlyMap<string, readonly Lot[]> => {
  const made = groupedBy(lots, deliveryKey)
  for (const same of made.values()) same.sort(byReceipt)
  return made
})

/** How many deliveries before a lot are looked back at. */
const LOOKED_BACK = 6

/** The newest deliveries of the same supplier and part that came in before the lot, oldest first. */
export const earlierDeliveries = (lot: Lot, lots: readonly Lot[]): readonly Lot[] =>
  lots
    .filter((one) => one.id !== lot.id && deliveryKey(one) === deliveryKey(lot) && byReceipt(one, lot) < 0)
    .sort(byReceipt)
    .slice(-LOOKED_BACK)

const byReceipt = (a: Lot, b: Lot): number => {
  if (a.receivedOn !== b.receivedOn) return a.receivedOn < b.receivedOn ? -1 : 1
  return a.code < b.code ? -1 : 1
}

/** What a part of a finding is about where it is about a lot. */
export const aboutLot = ({ code, part }: Lot): { readonly lot: string; readonly part: string } => ({
  lot: code,
  part,
})

/** How a lot is named in a finding: "lot B-07 (bare board LX-41)". */
export const lotName = ({ code, part }: Pick<Lot, 'code' | 'part'>): string => `lot ${code} (${part})`

/** Whether a lot's part is a component of the parts list: "transformer T1" is "T1", and so is "T1 transformer". */
export function namesComponent(part: string, component: string): boolean {
  const named = partKey(part)
  const key = partKey(component)
  return named === key || named.endsWith(` ${key}`) || named.startsWith(`${key} `)
}

/** A lot that may go into assemblies, now or once it is disposed of. */
export const isUsable = ({ disposition }: Pick<Lot, 'disposition'>): boolean =>
  !disposition || USABLE[disposition.verdict]

/** What became of a lot, as lists and title blocks say it. */
export const dispositionInWords = ({ disposition }: Pick<Lot, 'disposition'>): string =>
  disposition ? DISPOSED[disposition.verdict] : 'pending'

const DISPOSED: Readonly<Record<Disposition, string>> = {
  accept: 'accepted',
  reject: 'rejected',
  'use under concession': 'allowed under concession',
}

const USABLE: Readonly<Record<Disposition, boolean>> = {
  accept: true,
  'use under concession': true,
  reject: false,
}
