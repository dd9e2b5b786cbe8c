import { database } from '@/lib/db/client'
import type { SignedIn } from '@/lib/auth/session'
import { installationMark } from '@/lib/programme/installation-mark'
import { judgedAt } from '@/lib/programme/judged'
import { lessonsToDecide } from '@/lib/queries/lessons'
import { actorFrom } from '@/lib/queries/programme-reader'
import { openTasksOf } from '@/shared/gate/open-tasks'
import type { OpenTask } from '@/shared/gate/open-task'
import { dateOf } from '@/shared/quantity/calendar'

/** Something a person owes, and in which programme. */
export interface OpenTasksInProgramme extends OpenTask {
  readonly code: string
  readonly programme: string
}

interface HeadRow {
  readonly id: string
  readonly seq: number
  readonly hash: string
}

/** What a person owes over all their programmes, oldest due first; a few statements, and more only for programmes that changed. */
export async function deskOf(
  person: SignedIn,
  now = new Date(),
): Promise<{ openTasks: OpenTasksInProgramme[]; programmes: number }> {
  const [heads, installation, lessons] = await Promise.all([
    database().$queryRaw<HeadRow[]>`
      SELECT t."id", t."seq", t."headHash" AS "hash" FROM "Trail" t
      WHERE t."id" IN (SELECT DISTINCT "programmeId"::text FROM "Membership" WHERE "personId" = ${person.personId}::uuid)`,
    installationMark(),
    lessonsToDecide(person.personId),
  ])
  const today = dateOf(now)
  const judged = await Promise.all(heads.map(({ id, ...head }) => judgedAt(id, head, installation, today)))
  const openTasks = judged.flatMap((programme) => {
    const { code, title } = programme.state.programme
    return openTasksOf(actorFrom(programme, person), programme.state, programme.judgement).map((entry) => ({
      ...entry,
      code,
      programme: title,
    }))
  })
  const decisions = lessons.map(({ code, programme, number, title }): OpenTasksInProgramme => ({
    verb: 'decide',
    message: `Lesson for later programmes: ${title}`,
    department: 'quality',
    dueOn: null,
    place: { kind: 'lesson', number },
    code,
    programme,
  }))
  return { openTasks: [...openTasks, ...decisions].sort(byDue), programmes: heads.length }
}

/** Dated things first, the oldest first; then the rest, programme by programme. */
const byDue = (a: OpenTasksInProgramme, b: OpenTasksInProgramme): number => {
  if (a.dueOn !== b.dueOn) return (a.dueOn ?? '9999') < (b.dueOn ?? '9999') ? -1 : 1
  return a.code < b.code ? -1 : a.code > b.code ? 1 : 0
}
