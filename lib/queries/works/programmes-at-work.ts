import { database } from '@/lib/db/client'
import { judgedProgrammes, type JudgedProgramme, type ProgrammeHead } from '@/lib/programme/judged'
import { dateAtWorks } from '@/lib/settings/works'

/** Programmes as they stand, by their id, in the order asked for; two statements, and more only for those that changed. */
export async function programmesAtWork(
  ids: readonly string[],
  now = new Date(),
): Promise<ReadonlyMap<string, JudgedProgramme>> {
  const heads = await database().$queryRaw<ProgrammeHead[]>`
    SELECT "id", "seq", "headHash" AS "hash" FROM "Trail" WHERE "id" = ANY(${[...new Set(ids)]})`
  const judged = await judgedProgrammes(heads, dateAtWorks(now))
  const byId = new Map(judged.map((one) => [one.state.programme.id, one]))
  return new Map(ids.flatMap((id) => (byId.has(id) ? [[id, byId.get(id)!]] : [])))
}
