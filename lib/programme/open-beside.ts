import type { PrismaClient } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { groupedBy } from '@/shared/grouped-by'
import { standingOf } from '@/shared/nonconformities/standing'
import type { StepKind } from '@/shared/nonconformities/nonconformity'
import type { OpenBeside } from '@/shared/reviews/agenda'
import type { SubjectKind } from '@/shared/reviews/subject'

/** What is open in a programme beside its judged facts: studies, comments, nonconformities; four statements. */
export async function openBeside(db: PrismaClient | Transaction, programmeId: string): Promise<OpenBeside> {
  const [studies, comments, nonconformities, steps] = await Promise.all([
    db.optionStudy.findMany({
      where: { programmeId, adopted: null },
      orderBy: { number: 'asc' },
      select: { number: true, itemKey: true },
    }),
    db.comment.findMany({
      where: { programmeId, resolvedAt: null },
      orderBy: { number: 'asc' },
      select: { number: true, aboutKind: true, aboutKey: true },
    }),
    db.nonconformity.findMany({
      where: { programmeId },
      orderBy: { number: 'asc' },
      select: { number: true },
    }),
    db.nonconformityStep.findMany({
      where: { programmeId, withdrawnAt: null },
      orderBy: [{ at: 'asc' }, { id: 'asc' }],
      select: { nonconformity: true, kind: true, helped: true },
    }),
  ])
  const stepsOf = groupedBy(steps, ({ nonconformity }) => nonconformity)
  return {
    studies,
    comments: comments.map(({ number, aboutKind, aboutKey }) => ({
      number,
      about: { kind: aboutKind as SubjectKind, key: aboutKey },
    })),
    nonconformities: nonconformities
      .map(({ number }) => ({
        number,
        standing: standingOf(
          (stepsOf.get(number) ?? []).map(({ kind, helped }) => ({
            kind: kind as StepKind,
            helped,
            withdrawn: null,
          })),
        ),
      }))
      .filter(({ standing }) => standing !== 'checked'),
  }
}
