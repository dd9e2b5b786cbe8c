import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** A part that is not withdrawn, by its trail, with its newest revision; refuses a withdrawn one. */
export async function partInUse(tx: Transaction, trailId: string) {
  const part = await partAsItStands(tx, trailId)
  if (part.withdrawn)
    throw new Refused(
      `Part ${part.code} is withdrawn. Take it back into use before anything is changed of it.`,
    )
  return part
}

/** A part by its trail, withdrawn or not, with its newest revision. */
export async function partAsItStands(tx: Transaction, trailId: string) {
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
  const [newest] = revisions
  if (!newest) throw new Error('A part has one revision at least.')
  return {
    code,
    withdrawn: withdrawnAt !== null,
    newest: { ...newest, values: newest.values as Record<string, JsonValue> },
  }
}
