import { database } from '@/lib/db/client'
import type { Comment as Row } from '@/lib/db/generated/client'
import { namesOf } from '@/lib/programme/names-of'
import type { Named } from '@/lib/programme/rows'
import type { Comment } from '@/shared/reviews/review'
import type { Department } from '@/shared/plan/department'
import type { Subject, SubjectKind } from '@/shared/reviews/subject'

const SHOWN = 50

/** Comments on these subjects, oldest first, the newest of them; two statements. */
export async function readComments(programmeId: string, subjects: readonly Subject[]): Promise<Comment[]> {
  const rows = await database().comment.findMany({
    where: { programmeId, OR: subjects.map(({ kind, key }) => ({ aboutKind: kind, aboutKey: key })) },
    orderBy: { number: 'desc' },
    take: SHOWN,
  })
  return told(rows.reverse())
}

/** Every comment of the programme, oldest first; two statements. */
export async function readAllComments(programmeId: string): Promise<Comment[]> {
  return told(await database().comment.findMany({ where: { programmeId }, orderBy: { number: 'asc' } }))
}

async function told(rows: readonly Row[]): Promise<Comment[]> {
  if (rows.length === 0) return []
  const nameOf = await namesOf(
    database(),
    rows.flatMap(({ authorId, resolvedById, mentions }) => [authorId, resolvedById ?? authorId, ...mentions]),
  )
  return rows.map((row) => commentOf(row, nameOf))
}

/** A comment that names a person and is not resolved yet, and where it stands. */
export interface CommentForMe {
  readonly code: string
  readonly programme: string
  /** The person's own there. */
  readonly department: Department
  readonly comment: Comment
}

/** Unresolved comments for this person over all their programmes, oldest first; two statements. */
export async function commentsFor(personId: string): Promise<CommentForMe[]> {
  const rows = await database().comment.findMany({
    where: {
      mentions: { has: personId },
      resolvedAt: null,
      programme: { memberships: { some: { personId } } },
    },
    orderBy: { at: 'asc' },
    take: SHOWN,
    include: {
      programme: {
        select: {
          code: true,
          title: true,
          memberships: { where: { personId }, select: { department: true }, take: 1 },
        },
      },
    },
  })
  if (rows.length === 0) return []
  const nameOf = await namesOf(
    database(),
    rows.map(({ authorId }) => authorId),
  )
  return rows.map(({ programme, ...row }) => ({
    code: programme.code,
    programme: programme.title,
    department: (programme.memberships[0]?.department ?? 'quality') as Department,
    comment: commentOf(row, nameOf),
  }))
}

const commentOf = (row: Row, nameOf: Named): Comment => ({
  number: row.number,
  about: { kind: row.aboutKind as SubjectKind, key: row.aboutKey },
  text: row.text,
  mentions: row.mentions.map((id) => ({ id, name: nameOf(id) })),
  authorId: row.authorId,
  author: nameOf(row.authorId),
  at: row.at.toISOString(),
  resolved:
    row.resolvedById && row.resolvedAt
      ? { by: nameOf(row.resolvedById), at: row.resolvedAt.toISOString() }
      : null,
  action: row.action,
})
