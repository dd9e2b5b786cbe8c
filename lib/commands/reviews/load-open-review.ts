import { programmeCode, wholeNumber } from '@/lib/commands/inputs'
import { knownSubject, type NamedSubject } from '@/lib/commands/reviews/known-subject'
import type { Transaction } from '@/lib/db/transaction'
import { loadReview } from '@/lib/programme/load-review'
import { Refused } from '@/shared/refused'
import type { Review } from '@/shared/reviews/review'
import type { Subject } from '@/shared/reviews/subject'

/** Which review a command is about. */
export const reviewNamed = { programme: programmeCode, review: wholeNumber('The review', 1, 1_000_000) }

/** The review of that number, its minutes still open. Refused when there is none, or when they are signed. */
export async function loadOpenReview(tx: Transaction, programmeId: string, number: number): Promise<Review> {
  const review = await loadReview(tx, programmeId, number)
  if (!review) throw new Refused(`There is no review ${number} in this programme.`)
  if (review.closed)
    throw new Refused(
      `Review ${number} is closed: its minutes are signed, and nothing of them changes any more.`,
    )
  return review
}

/** The number that the next line of minutes gets. */
export const nextLine = ({ lines }: Review): number => (lines.at(-1)?.number ?? 0) + 1

/** What a line is about: something of the programme, or a point of the same minutes. */
export async function lineSubject(
  tx: Transaction,
  programmeId: string,
  review: Review,
  about: Subject | null,
): Promise<NamedSubject | null> {
  if (about?.kind !== 'point') return about && knownSubject(tx, programmeId, about)
  const point = review.lines.find(
    ({ number, kind, struck }) => kind === 'point' && !struck && String(number) === about.key,
  )
  if (!point) throw new Refused('These minutes have no such point.', { about: 'Choose another point.' })
  return { kind: 'point', key: about.key, name: point.text }
}

/** What of a subject is stored beside a line. */
export const storedSubject = (about: NamedSubject | null) => about && { kind: about.kind, key: about.key }
