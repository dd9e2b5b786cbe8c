import {
  Prisma,
  type Lot as LotRow,
  type LotTest as LotTestRow,
  type PrismaClient,
} from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { correctedBy, newestCorrections } from '@/lib/programme/works/newest-corrections'
import { groupedBy } from '@/shared/grouped-by'
import { lotNames } from '@/shared/works/lot-name'
import { heldBy } from '@/shared/storage/order-of-use'

type Db = PrismaClient | Transaction

const IN_ORDER = [{ at: 'asc' as const }, { id: 'asc' as const }]
const WITH_SUBJECT = { subject: { select: { kind: true, code: true } } } as const

/** A lot that speaks for a programme: recorded in it before the works kept lots, or allocated to it. */
export interface OwnLot {
  readonly id: string
  /** As the programme calls it. */
  readonly name: string
  /** Pieces the programme holds of a lot of the works; undefined for one recorded in the programme. */
  readonly allocated: number | undefined
  /** Assemblies of the programme that it is recorded for; of a lot recorded there its own row says it. */
  readonly usedIn: readonly string[]
}

interface Programme {
  readonly id: string
  readonly code: string
}

/**
 * The lots that speak for a programme, in the order in which it got them. One of which everything went back, and of
 * which it used nothing, speaks for it no more; its name stays taken, so that no other lot's changes.
 */
export async function ownLots(db: Db, { id: programmeId, code }: Programme): Promise<OwnLot[]> {
  const select = { id: true, code: true, ...WITH_SUBJECT } as const
  const [recorded, allocations, uses] = await Promise.all([
    db.lot.findMany({ where: { trailId: programmeId }, select, orderBy: IN_ORDER }),
    db.lotAllocation.findMany({
      where: { programmeId },
      select: { lotId: true, quantity: true, returned: true, lot: { select } },
      orderBy: IN_ORDER,
    }),
    db.lotUse.findMany({
      where: { programmeId },
      select: { lotId: true, assemblies: true },
      orderBy: IN_ORDER,
    }),
  ])
  const held = groupedBy(allocations, ({ lotId }) => lotId)
  const usedIn = groupedBy(uses, ({ lotId }) => lotId)
  const allocated = [...held.values()].map((of) => of[0]!.lot)
  const names = lotNames(
    [...recorded, ...allocated].map(({ subject, ...lot }) => ({ ...lot, recordedIn: subject })),
    code,
  )
  const own = (id: string) => ({
    id,
    name: names.get(id) ?? '',
    usedIn: (usedIn.get(id) ?? []).flatMap(({ assemblies }) => assemblies),
  })
  return [
    ...recorded.map(({ id }) => ({ ...own(id), allocated: undefined })),
    ...allocated
      .map(({ id }) => ({ ...own(id), allocated: heldBy(held.get(id) ?? []) }))
      .filter((lot) => lot.allocated > 0 || lot.usedIn.length > 0),
  ]
}

/** The lot that a programme calls so; undefined where none speaks for it by that name. */
export const lotCalled = async (db: Db, programme: Programme, name: string): Promise<OwnLot | undefined> =>
  (await ownLots(db, programme)).find((lot) => lot.name === name)

export type LotWithSubject = LotRow & { readonly subject: { readonly kind: string; readonly code: string } }
export interface LotRows {
  readonly lots: readonly LotWithSubject[]
  readonly tests: readonly LotTestRow[]
}

/** The rows of lots, with their tests that stand, all as corrected, and where each is recorded. */
export async function loadLotRows(db: Db, own: readonly OwnLot[]): Promise<LotRows> {
  if (own.length === 0) return { lots: [], tests: [] }
  const ids = await sameSuppliers(
    db,
    own.map(({ id }) => id),
  )
  const [lots, tests] = await Promise.all([
    db.lot.findMany({ where: { id: { in: ids } }, include: WITH_SUBJECT, orderBy: IN_ORDER }),
    db.lotTest.findMany({ where: { lotId: { in: ids }, withdrawnAt: null }, orderBy: IN_ORDER }),
  ])
  const corrected = await newestCorrections(db, [...ids, ...tests.map(({ id }) => id)])
  const asCorrected = correctedBy(corrected)
  return { lots: lots.map(asCorrected), tests: tests.map(asCorrected) }
}

/** The given lots, and every lot of the works, under whatever trail, that is of a supplier of theirs. */
async function sameSuppliers(db: Db, ids: readonly string[]): Promise<string[]> {
  if (ids.length === 0) return []
  const rows = await db.$queryRaw<{ id: string }[]>`
    WITH supplier AS (${supplierKeys(Prisma.sql`own."id" = ANY(${[...ids]}::uuid[])`)})
    SELECT lot."id"::text AS "id" FROM "Lot" AS lot
      WHERE lot."id" = ANY(${[...ids]}::uuid[]) OR name_key(lot."supplier") IN (SELECT "key" FROM supplier)
    UNION
    SELECT correction."subjectId"::text FROM "Correction" AS correction
      WHERE correction."of" = 'lot' AND name_key(correction."values" ->> 'supplier') IN (SELECT "key" FROM supplier)`
  return rows.map(({ id }) => id)
}

/** The names of the suppliers of some lots as they are compared, as noted and as corrected since; `own` names the lots. */
export const supplierKeys = (which: Prisma.Sql): Prisma.Sql => Prisma.sql`
  SELECT name_key(own."supplier") AS "key" FROM "Lot" AS own WHERE ${which}
  UNION
  SELECT name_key(correction."values" ->> 'supplier') FROM "Lot" AS own
    JOIN "Correction" AS correction ON correction."subjectId" = own."id" AND correction."of" = 'lot'
    WHERE ${which}`
