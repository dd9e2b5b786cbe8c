import { database } from '@/lib/db/client'
import { loadReview, loadReviews } from '@/lib/programme/load-review'
import { namesOf } from '@/lib/programme/names-of'
import { openBeside } from '@/lib/programme/open-beside'
import type { OpenBeside } from '@/shared/reviews/agenda'
import type { MinuteLine, Review } from '@/shared/reviews/review'

/** One review with its minutes; undefined when the programme has none of that number. */
export const readReview = (programmeId: string, number: number): Promise<Review | undefined> =>
  loadReview(database(), programmeId, number)

/** Every review of a programme with its minutes, oldest first. */
export const readMinutes = (programmeId: string): Promise<Review[]> => loadReviews(database(), programmeId)

/** What is open beside the judged facts of a programme. */
export const readOpenBeside = (programmeId: string): Promise<OpenBeside> =>
  openBeside(database(), programmeId)

/** A review in a list: without its minutes. */
export interface ReviewInBrief {
  readonly number: number
  readonly title: string
  readonly heldOn: string
  readonly chair: string
  readonly lines: number
  readonly closedAt: string | null
}

const SHOWN = 100

/** The reviews of a programme, newest first; three statements. */
export async function readReviews(programmeId: string): Promise<ReviewInBrief[]> {
  const [rows, lines] = await Promise.all([
    database().review.findMany({ where: { programmeId }, orderBy: { number: 'desc' }, take: SHOWN }),
    database().minuteLine.groupBy({ by: ['review'], where: { programmeId }, _count: { _all: true } }),
  ])
  const nameOf = await namesOf(
    database(),
    rows.map(({ chairId }) => chairId),
  )
  const counts = new Map(lines.map(({ review, _count }) => [review, _count._all]))
  return rows.map(({ number, title, heldOn, chairId, closedAt }) => ({
    number,
    title,
    heldOn,
    chair: nameOf(chairId),
    lines: counts.get(number) ?? 0,
    closedAt: closedAt?.toISOString() ?? null,
  }))
}

/** Where an action was minuted: the review, and the line with who owes it. */
export async function readMinuteOf(
  programmeId: string,
  action: number,
): Promise<{ review: number; line: MinuteLine['number']; owner: string } | undefined> {
  const row = await database().minuteLine.findFirst({ where: { programmeId, action } })
  if (!row) return undefined
  const nameOf = await namesOf(database(), [row.ownerId ?? row.authorId])
  return { review: row.review, line: row.number, owner: nameOf(row.ownerId ?? row.authorId) }
}
