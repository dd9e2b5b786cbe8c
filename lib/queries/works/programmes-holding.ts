import { database } from '@/lib/db/client'
import type { Prisma } from '@/lib/db/generated/client'
import { judgedProgrammes, type JudgedProgramme } from '@/lib/programme/judged'
import { dateAtWorks } from '@/lib/settings/works'

/** The programmes that hold, held or used some of these lots, as they stand, by their codes. */
export async function programmesHolding(lots: Prisma.LotWhereInput): Promise<JudgedProgramme[]> {
  const db = database()
  const programmes = await db.programme.findMany({
    where: { OR: [{ allocations: { some: { lot: lots } } }, { lotUses: { some: { lot: lots } } }] },
    select: { id: true },
    orderBy: { code: 'asc' },
  })
  const ids = programmes.map(({ id }) => id)
  const trails = await db.trail.findMany({ where: { id: { in: ids } } })
  const heads = trails.map(({ id, seq, headHash }) => ({ id, seq, hash: headHash }))
  const judged = await judgedProgrammes(heads, dateAtWorks(new Date()))
  return judged.sort((one, other) => (one.state.programme.code < other.state.programme.code ? -1 : 1))
}
