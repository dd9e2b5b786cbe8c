import type { Prisma } from '@/lib/db/generated/client'
import { wordsSought } from '@/shared/commands/words-sought'

/** Entries in which every word of a text is read: in what was recorded, in who did it, or in the verbs and names shown. */
export const entriesSaying = (text: string): Prisma.TrailEntryWhereInput => ({
  AND: wordsSought(text).map(({ word, commands, keys }) => ({
    OR: [
      { payload: { contains: word, mode: 'insensitive' } },
      { actorName: { contains: word, mode: 'insensitive' } },
      ...(commands.length > 0 ? [{ command: { in: [...commands] } }] : []),
      ...keys.map((key) => ({ payload: { contains: `"${key}"` } })),
    ],
  })),
})
