import type {
  Nonconformity as Row,
  NonconformityStep as StepRow,
  Prisma,
  PrismaClient,
} from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { namesOf } from '@/lib/programme/names-of'
import type { Named } from '@/lib/programme/rows'
import { groupedBy } from '@/shared/grouped-by'
import type {
  Nonconformity,
  NonconformityPlace,
  NonconformityStep,
  StepKind,
} from '@/shared/nonconformities/nonconformity'
import type { Department } from '@/shared/plan/department'
import type { Subject } from '@/shared/reviews/subject'

/** Nonconformities with all that was done about them, newest first: three statements. */
export async function loadNonconformities(
  db: PrismaClient | Transaction,
  where: Prisma.NonconformityWhereInput & { programmeId: string },
): Promise<Nonconformity[]> {
  const rows = await db.nonconformity.findMany({ where, orderBy: { number: 'desc' } })
  const steps = await db.nonconformityStep.findMany({
    where: { programmeId: where.programmeId, nonconformity: { in: rows.map(({ number }) => number) } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  })
  const nameOf = await namesOf(db, [
    ...rows.map(({ openedById }) => openedById),
    ...steps.flatMap(({ addedById, withdrawnById }) => [addedById, withdrawnById ?? addedById]),
  ])
  const byNumber = groupedBy(steps, ({ nonconformity }) => nonconformity)
  return rows.map((row) => nonconformityOf(row, byNumber.get(row.number) ?? [], nameOf))
}

const nonconformityOf = (row: Row, steps: readonly StepRow[], nameOf: Named): Nonconformity => ({
  number: row.number,
  title: row.title,
  found: row.found,
  foundOn: row.foundOn,
  owner: row.owner as Department,
  place: row.place as unknown as NonconformityPlace,
  source: row.source as Subject | null,
  openedBy: nameOf(row.openedById),
  at: row.at.toISOString(),
  steps: steps.map((step) => stepOf(step, nameOf)),
})

const stepOf = (row: StepRow, nameOf: Named): NonconformityStep => ({
  id: row.id,
  kind: row.kind as StepKind,
  text: row.text,
  doneOn: row.doneOn,
  helped: row.helped,
  addedById: row.addedById,
  addedBy: nameOf(row.addedById),
  at: row.at.toISOString(),
  withdrawn: row.withdrawnAt
    ? {
        by: nameOf(row.withdrawnById ?? ''),
        at: row.withdrawnAt.toISOString(),
        why: row.withdrawnWhy ?? '',
      }
    : null,
})
