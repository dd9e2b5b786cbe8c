import { database } from '@/lib/db/client'
import { Prisma, type PrismaClient } from '@/lib/db/generated/client'
import { namedParts } from '@/lib/programme/works/named-parts'
import type { Transaction } from '@/lib/db/transaction'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { partsList } from '@/shared/plan/parameters/parts-list'
import { partsNamedIn, type ListedPart } from '@/shared/works/listed-part'
import type { PartValues } from '@/shared/works/part-columns'
import { partDigest } from '@/shared/works/part-content'

type Db = PrismaClient | Transaction

/** The parts that a programme names, today or in what is proposed, by their number; those that the works have described. */
export async function loadListedParts(db: Db, programmeId: string): Promise<ListedPart[]> {
  const named = await db.$queryRaw<{ part: string }[]>`
    SELECT DISTINCT "part" FROM (${namedParts(Prisma.sql`ARRAY[${programmeId}::uuid]`)}) AS named`
  return partsNamed(
    db,
    named.map(({ part }) => part),
  )
}

/** A programme as it would be judged with this value of a parameter: with the parts that another parts list names. */
export async function withPartsNamed(
  state: ProgrammeState,
  parameter: string,
  value: unknown,
): Promise<ProgrammeState> {
  if (parameter !== partsList.key) return state
  const { facts } = state
  const known = new Set(facts.records.parts.map(({ code }) => code))
  const others = await partsNamed(
    database(),
    partsNamedIn(value).filter((code) => !known.has(code)),
  )
  if (others.length === 0) return state
  const records = { ...facts.records, parts: [...facts.records.parts, ...others] }
  return { ...state, facts: { ...facts, records } }
}

/** The parts of these numbers that the works have described, with their newest values and whether those are approved. */
async function partsNamed(db: Db, codes: readonly string[]): Promise<ListedPart[]> {
  if (codes.length === 0) return []
  const rows = await db.part.findMany({
    where: { code: { in: [...codes] } },
    orderBy: { code: 'asc' },
    select: {
      code: true,
      withdrawnAt: true,
      revisions: { orderBy: { number: 'desc' }, take: 1, select: { number: true, values: true } },
      approvals: { select: { digest: true } },
    },
  })
  return rows.flatMap(({ code, withdrawnAt, revisions: [newest], approvals }) => {
    if (!newest) return []
    const values = newest.values as unknown as PartValues
    const digest = partDigest(code, values)
    return [
      {
        code,
        revision: newest.number,
        digest,
        approved: approvals.some((approval) => approval.digest === digest),
        withdrawn: withdrawnAt !== null,
        values,
      },
    ]
  })
}
