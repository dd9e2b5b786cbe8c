import { database } from '@/lib/db/client'
import { lessonOf, withProgramme } from '@/lib/programme/lesson-row'
import type { Lesson } from '@/shared/lessons/lesson'

/** The lessons of one programme, newest first; one statement. */
export async function lessonsOf(programmeId: string): Promise<Lesson[]> {
  const rows = await database().lesson.findMany({
    where: { programmeId },
    orderBy: { number: 'desc' },
    ...withProgramme,
  })
  return rows.map(lessonOf)
}

/**
 * The lessons a person may read, newest first: accepted ones are everybody's,
 * since they come into every programme; the others belong to their programme.
 * One statement.
 */
export async function lessonsFor(person: {
  readonly personId: string
  readonly auditor: boolean
}): Promise<Lesson[]> {
  const own = { programme: { memberships: { some: { personId: person.personId } } } }
  const rows = await database().lesson.findMany({
    where: person.auditor ? {} : { OR: [{ decision: 'accepted' }, own] },
    orderBy: [{ proposedAt: 'desc' }, { id: 'asc' }],
    ...withProgramme,
  })
  return rows.map(lessonOf)
}

/** A lesson that waits for this person’s decision. */
export interface WaitingLesson {
  readonly code: string
  readonly programme: string
  readonly number: number
  readonly title: string
}

/** Undecided lessons of the programmes where the person is of quality, except their own; one statement. */
export async function lessonsToDecide(personId: string): Promise<WaitingLesson[]> {
  const rows = await database().lesson.findMany({
    where: {
      decision: null,
      proposedById: { not: personId },
      programme: { memberships: { some: { personId, department: 'quality' } } },
    },
    orderBy: { proposedAt: 'asc' },
    select: { number: true, title: true, programme: { select: { code: true, title: true } } },
  })
  return rows.map(({ number, title, programme }) => ({
    code: programme.code,
    programme: programme.title,
    number,
    title,
  }))
}
