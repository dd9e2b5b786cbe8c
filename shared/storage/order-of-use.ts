import type { Lot } from '@/shared/records/lot'
import { isUsable, kindAndPart } from '@/shared/records/lot-identity'

/** A lot in the store of the works, and how much of it programmes hold. */
export interface LotInStore extends Pick<
  Lot,
  'id' | 'code' | 'kind' | 'part' | 'supplier' | 'quantity' | 'receivedOn' | 'disposition'
> {
  /** The last day on which it may be used, 'YYYY-MM-DD'; null where none was stated. */
  readonly expiresOn: string | null
  readonly allocations: readonly Allocated[]
}
export interface Allocated {
  readonly quantity: number
  /** Of these, what came back. */
  readonly returned: number
}

/** Pieces that allocations hold, without what came back. */
export const heldBy = (allocations: readonly Allocated[]): number =>
  allocations.reduce((held, { quantity, returned }) => held + quantity - returned, 0)

/** Pieces of a lot that no programme holds. */
export const leftInStore = ({
  quantity,
  allocations,
}: Pick<LotInStore, 'quantity' | 'allocations'>): number => quantity - heldBy(allocations)

export const isExpired = ({ expiresOn }: Pick<LotInStore, 'expiresOn'>, today: string): boolean =>
  expiresOn !== null && expiresOn < today

/** First expired, first used; among those without a date, and of one date, first received. */
export function byOrderOfUse(one: LotInStore, other: LotInStore): number {
  const keys = ({ expiresOn, receivedOn, supplier, code }: LotInStore) => [
    expiresOn ?? 'none stated',
    receivedOn,
    supplier,
    code,
  ]
  const others = keys(other)
  for (const [place, key] of keys(one).entries()) {
    const than = others[place]!
    if (key !== than) return key < than ? -1 : 1
  }
  return 0
}

/** The lot of the same part that is to be used before this one; undefined where this one is the first. */
export const toUseFirst = (
  lot: LotInStore,
  store: readonly LotInStore[],
  today: string,
): LotInStore | undefined =>
  store
    .filter(
      (other) =>
        other.id !== lot.id &&
        kindAndPart(other) === kindAndPart(lot) &&
        isUsable(other) &&
        !isExpired(other, today) &&
        leftInStore(other) > 0 &&
        byOrderOfUse(other, lot) < 0,
    )
    .sort(byOrderOfUse)[0]
