import type { MinuteLine as LineRow, PrismaClient, Review as ReviewRow } from '@/lib/db/generated/client'
import type { Transaction } from '@/lib/db/transaction'
import { namesOf } from '@/lib/programme/names-of'
import type { Named } from '@/lib/programme/rows'
import { groupedBy } from '@/shared/grouped-by'
import type { LineKind, MinuteLine, Present, Review } from '@/shared/reviews/review'
import type { Subject } from '@/shared/reviews/subject'

type Database = PrismaClient | Transaction

/** One review with all its lines; undefined when the programme has none of that number. Three statements. */
export async function loadReview(
  db: Database,
  programmeId: string,
  number: number,
): Promise<Review | undefined> {
  const row = await db.review.findUnique({ where: { programmeId_number: { programmeId, number } } })
  if (!row) return undefined
  const lines = await db.minuteLine.findMany({
    where: { programmeId, review: number },
    orderBy: { number: 'asc' },
  })
  return reviewOf(row, lines, await namesOf(db, peopleIn(row, lines)))
}

/** Every review of a programme with all its lines, oldest first; three statements. */
export async function loadReviews(db: Database, programmeId: string): Promise<Review[]> {
  const [rows, lines] = await Promise.all([
    db.review.findMany({ where: { programmeId }, orderBy: { number: 'asc' } }),
    db.minuteLine.findMany({ where: { programmeId }, orderBy: { number: 'asc' } }),
  ])
  const linesOf = groupedBy(lines, ({ review }) => review)
  const own = ({ number }: ReviewRow) => linesOf.get(number) ?? []
  const nameOf = await namesOf(
    db,
    rows.flatMap((row) => peopleIn(row, own(row))),
  )
  return rows.map((row) => reviewOf(row, own(row), nameOf))
}

const peopleIn = ({ chairId }: ReviewRow, lines: readonly LineRow[]): string[] => [
  chairId,
  ...lines.flatMap(({ authorId, ownerId, struckById }) =>
    [authorId, ownerId, struckById].filter((id) => id !== null),
  ),
]

export const reviewOf = (row: ReviewRow, lines: readonly LineRow[], nameOf: Named): Review => ({
  number: row.number,
  title: row.title,
  heldOn: row.heldOn,
  chairId: row.chairId,
  chair: nameOf(row.chairId),
  present: row.present as unknown as Present[],
  lines: lines.map((line) => lineOf(line, nameOf)),
  closed:
    row.closedById && row.closedAt
      ? {
          byId: row.closedById,
          by: row.closedByName ?? nameOf(row.closedById),
          at: row.closedAt.toISOString(),
          digest: row.digest ?? '',
          cover: row.cover ?? '',
        }
      : null,
})

const lineOf = (row: LineRow, nameOf: Named): MinuteLine => ({
  number: row.number,
  kind: row.kind as LineKind,
  about: row.about as Subject | null,
  text: row.text,
  action: row.action,
  owner: row.ownerId ? { id: row.ownerId, name: nameOf(row.ownerId) } : null,
  corrects: row.corrects,
  authorId: row.authorId,
  author: nameOf(row.authorId),
  at: row.at.toISOString(),
  struck:
    row.struckById && row.struckAt
      ? {
          byId: row.struckById,
          by: nameOf(row.struckById),
          at: row.struckAt.toISOString(),
          why: row.struckWhy ?? '',
        }
      : null,
})
