import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** A part that is not withdrawn, by its trail, with its newest revision; refuses a withdrawn one. */
export async function partInUse(tx: Transaction, trailId: string) {
  const { code, withdrawnAt, revisions } = await tx.part.findUniqueOrThrow({
    where: { id: trailId },
    select: {
      code: true,
      withdrawnAt: true,
      revisions: {
        orderBy: { number: 'desc' },
        take: 1,
        select: { number: true, values: true, authorId: true },
      },
    },
  })
  if (withdrawnAt) throw new Refused(`Part ${code} is withdrawn. Nothing more is changed of it.`)
  const [newest] = revisions
  if (!newest) throw new Error('A part has one revision at least.')
  return { code, newest: { ...newest, values: newest.values as Record<string, JsonValue> } }
}
