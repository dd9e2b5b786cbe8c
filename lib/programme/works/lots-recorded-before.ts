import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { newestCorrections } from '@/lib/programme/works/newest-corrections'
import { partKey } from '@/shared/records/lot-identity'
import type { Lot } from '@/shared/records/lot'

/** A lot that a programme recorded before the works kept them; it is tested and disposed of there. */
export interface LotRecordedBefore extends Pick<
  Lot,
  'id' | 'code' | 'part' | 'quantity' | 'receivedOn' | 'disposition'
> {
  readonly programme: string
}

/** The lots of a supplier that programmes recorded, by its name as they noted it or corrected it; three statements. */
export async function lotsRecordedBefore(
  db: PrismaClient | Transaction,
  supplier: string,
): Promise<LotRecordedBefore[]> {
  const named = await db.$queryRaw<{ id: string }[]>`
    SELECT lot."id"::text AS "id" FROM "Lot" AS lot WHERE name_key(lot."supplier") = name_key(${supplier})
    UNION
    SELECT correction."subjectId"::text FROM "Correction" AS correction
      WHERE correction."of" = 'lot' AND name_key(correction."values" ->> 'supplier') = name_key(${supplier})`
  const ids = named.map(({ id }) => id)
  const [rows, corrected] = await Promise.all([
    db.lot.findMany({
      where: { id: { in: ids }, subject: { kind: 'programme' } },
      include: { subject: { select: { code: true } } },
      orderBy: [{ receivedOn: 'asc' }, { at: 'asc' }, { id: 'asc' }],
    }),
    newestCorrections(db, ids),
  ])
  return rows
    .map((row) => ({ ...row, ...corrected.get(row.id) }))
    .filter((lot) => partKey(lot.supplier) === partKey(supplier))
    .map(({ id, code, part, quantity, receivedOn, disposition, subject }) => ({
      ...{ id, code, part, quantity, receivedOn, programme: subject.code },
      disposition: disposition as Lot['disposition'],
    }))
}
