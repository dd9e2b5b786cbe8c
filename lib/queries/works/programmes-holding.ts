import { database } from '@/lib/db/client'
import type { Prisma } from '@/lib/db/generated/client'
import type { JudgedProgramme } from '@/lib/programme/judged'
import { programmesAtWork } from '@/lib/queries/works/programmes-at-work'

/** The programmes that hold, held or used some of these lots, as they stand, by their codes. */
export async function programmesHolding(lots: Prisma.LotWhereInput): Promise<JudgedProgramme[]> {
  const programmes = await database().programme.findMany({
    where: { OR: [{ allocations: { some: { lot: lots } } }, { lotUses: { some: { lot: lots } } }] },
    select: { id: true },
    orderBy: { code: 'asc' },
  })
  return [...(await programmesAtWork(programmes.map(({ id }) => id))).values()]
}
