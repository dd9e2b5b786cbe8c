import type { Lesson as Row } from '@/lib/db/generated/client'
import type { Lesson, LessonSource } from '@/shared/lessons/lesson'
import { lessonChangeSchema } from '@/shared/lessons/lesson-change'

/** A stored lesson; `code` is that of the programme it was learnt in. */
export const lessonOf = (row: Row & { readonly programme: { readonly code: string } }): Lesson => ({
  programme: row.programme.code,
  number: row.number,
  title: row.title,
  learnt: row.learnt,
  source: row.source as unknown as LessonSource,
  change: lessonChangeSchema.parse(row.change),
  proposed: { byId: row.proposedById, byName: row.proposedByName, at: row.proposedAt.toISOString() },
  decided:
    row.decision === null
      ? null
      : {
          accepted: row.decision === 'accepted',
          why: row.decisionWhy ?? '',
          byId: row.decidedById ?? '',
          byName: row.decidedByName ?? 'somebody unknown',
          at: row.decidedAt?.toISOString() ?? '',
        },
  retired:
    row.retiredAt === null
      ? null
      : {
          why: row.retiredWhy ?? '',
          byId: row.retiredById ?? '',
          byName: row.retiredByName ?? 'somebody unknown',
          at: row.retiredAt.toISOString(),
        },
})

/** Reads a lesson together with the code of its programme. */
export const withProgramme = { include: { programme: { select: { code: true } } } } as const
