import { database } from '@/lib/db/client'
import type { SignedIn } from '@/lib/auth/session'
import { judgedProgrammes, type ProgrammeHead } from '@/lib/programme/judged'
import { standInsOf, standingIn } from '@/lib/programme/stand-ins'
import { commentsFor, type CommentForMe } from '@/lib/queries/comments'
import { lessonsToDecide } from '@/lib/queries/lessons'
import { nonconformitiesAtWork } from '@/lib/queries/nonconformities-at-work'
import { actorFrom } from '@/lib/queries/programme-reader'
import { dateAtWorks } from '@/lib/settings/works'
import type { Absent } from '@/shared/actor'
import { deskKey, type DeskEntry } from '@/shared/desk/desk-entry'
import { deskEntriesOf, valuesForLaterOf } from '@/shared/desk/desk-of'
import type { Margin } from '@/shared/rules/finding'
import { commentsPlace } from '@/shared/reviews/subject-in-words'
import { groupedBy } from '@/shared/grouped-by'

/** A line of a person's desk, and the programme it is of. */
export interface DeskLine extends DeskEntry {
  readonly code: string
  readonly programme: string
  /** Of the finding that it is about. */
  readonly margin?: Margin | undefined
}

/** A person's desk over all their programmes. */
export interface Desk {
  /** Oldest due first. */
  readonly lines: readonly DeskLine[]
  readonly programmes: number
  /** Values of later stages, which wait for their stage. */
  readonly later: number
  /** For whom some of these lines are there. */
  readonly standsInFor: readonly Absent[]
}

/** Whose desk it is, as far as it matters. */
export type DeskOwner = Pick<SignedIn, 'personId' | 'name' | 'auditor' | 'administrator'>

/** What lies on a person's desk; a few statements, and more only for programmes that changed. */
export async function deskOf(person: DeskOwner, now = new Date()): Promise<Desk> {
  const today = dateAtWorks(now)
  const standIns = await standInsOf(database(), person.personId, today)
  const [heads, lessons, comments] = await Promise.all([
    database().$queryRaw<ProgrammeHead[]>`
      SELECT t."id", t."seq", t."headHash" AS "hash" FROM "Trail" t
      WHERE t."id" IN (SELECT "programmeId"::text FROM "Membership" WHERE "personId" = ${person.personId}::uuid)
         OR t."id" = ANY(${[...standIns.keys()]})`,
    lessonsToDecide(person.personId),
    commentsFor(person.personId),
  ])
  const [nonconformities, all] = await Promise.all([
    nonconformitiesAtWork(heads.map(({ id }) => id)),
    judgedProgrammes(heads, today),
  ])
  const parts = all.map((judged) => ({
    judged,
    actor: standingIn(actorFrom(judged, person), standIns.get(judged.state.programme.id)),
  }))
  const lines = parts.flatMap(({ judged: { state, judgement }, actor }) =>
    deskEntriesOf(actor, state, judgement, nonconformities.get(state.programme.id)).map((entry) => ({
      ...entry,
      code: state.programme.code,
      programme: state.programme.title,
      margin: entry.place.kind === 'finding' ? judgement.findings.get(entry.place.rule)?.margin : undefined,
    })),
  )
  const decisions = lessons.map(({ code, programme, number, title }): DeskLine => ({
    bearing: 'others wait',
    verb: 'decide',
    message: `Lesson for later programmes: ${title}`,
    department: 'quality',
    dueOn: null,
    place: { kind: 'lesson', number },
    code,
    programme,
  }))
  return {
    lines: [...lines, ...decisions, ...toReply(comments)].sort(byDue),
    programmes: heads.length,
    later: parts.reduce((sum, { judged, actor }) => sum + valuesForLaterOf(actor, judged.judgement), 0),
    standsInFor: absentIn(parts.flatMap(({ actor }) => actor.standsInFor ?? [])),
  }
}

/** Comments that name the person wait for their reply; those beside one thing are one line. */
function toReply(comments: readonly CommentForMe[]): DeskLine[] {
  const lines = comments.map(({ code, programme, department, comment }): DeskLine => ({
    bearing: 'others wait',
    verb: 'reply',
    message: `${comment.author}: ${comment.text}`,
    department,
    dueOn: null,
    place: commentsPlace(comment.about),
    code,
    programme,
  }))
  return [...groupedBy(lines, deskLineKey).values()].map((same) => ({
    ...same[0]!,
    message: same.map(({ message }) => message).join(' · '),
  }))
}

/** The same line of two programmes is two things. */
export const deskLineKey = (line: DeskLine): string => `${line.code} ${deskKey(line)}`

const absentIn = (all: readonly Absent[]): Absent[] => [
  ...new Map(all.map((absent) => [absent.personId, absent])).values(),
]

/** Dated things first, the oldest first; then the rest, programme by programme. */
const byDue = (a: DeskLine, b: DeskLine): number => {
  if (a.dueOn !== b.dueOn) return (a.dueOn ?? '9999') < (b.dueOn ?? '9999') ? -1 : 1
  return a.code < b.code ? -1 : a.code > b.code ? 1 : 0
}
