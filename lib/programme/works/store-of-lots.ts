import type { Prisma, PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { newestCorrections } from '@/lib/programme/works/newest-corrections'
import type { LotKind } from '@/shared/methods/lot-kind'
import type { Lot } from '@/shared/records/lot'
import type { LotInStore } from '@/shared/storage/order-of-use'

type Db = PrismaClient | Transaction

/** An allocation with the programme that holds it. */
export interface AllocationInStore {
  readonly id: string
  readonly programme: string
  readonly quantity: number
  readonly returned: number
  readonly outOfOrder: string | null
  readonly at: Date
}
export interface StoreLot extends LotInStore {
  readonly dateCode: string
  readonly allocations: readonly AllocationInStore[]
}

/** Lots of one part in the store, by what they were noted as or are corrected to; three statements. */
export async function lotsOfPart(db: Db, part: string): Promise<StoreLot[]> {
  const named = await db.$queryRaw<{ id: string }[]>`
    SELECT lot."id"::text AS "id" FROM "Lot" AS lot WHERE name_key(lot."part") = name_key(${part})
    UNION
    SELECT correction."subjectId"::text FROM "Correction" AS correction
      WHERE correction."of" = 'lot' AND name_key(correction."values" ->> 'part') = name_key(${part})`
  return lotsInStore(db, { id: { in: named.map(({ id }) => id) } })
}

/** Lots that were received at suppliers of the works, as corrected, with who holds what of them; two statements. */
export async function lotsInStore(db: Db, where: Prisma.LotWhereInput = {}): Promise<StoreLot[]> {
  const rows = await db.lot.findMany({
    where: { ...where, subject: { kind: 'supplier' } },
    include: {
      allocations: {
        include: { programme: { select: { code: true } } },
        orderBy: [{ at: 'asc' }, { id: 'asc' }],
      },
    },
    orderBy: [{ receivedOn: 'asc' }, { at: 'asc' }, { id: 'asc' }],
  })
  const corrected = await newestCorrections(
    db,
    rows.map(({ id }) => id),
  )
  return rows.map((row) => {
    const { id, code, kind, part, supplier, dateCode, quantity, receivedOn, expiresOn } = {
      ...row,
      ...corrected.get(row.id),
    }
    return {
      ...{ id, code, part, supplier, dateCode, quantity, receivedOn, expiresOn },
      kind: kind as LotKind,
      disposition: row.disposition as Lot['disposition'],
      allocations: row.allocations.map(({ programme, ...allocation }) => ({
        id: allocation.id,
        programme: programme.code,
        quantity: allocation.quantity,
        returned: allocation.returned,
        outOfOrder: allocation.outOfOrder,
        at: allocation.at,
      })),
    }
  })
}
