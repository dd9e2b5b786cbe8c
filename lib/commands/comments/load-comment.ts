import type { Transaction } from '@/lib/db/transaction'
import { Refused } from '@/shared/refused'

/** The comment of that number, not resolved yet. Refused when there is none, or when it is resolved. */
export async function loadOpenComment(tx: Transaction, programmeId: string, number: number) {
  const comment = await tx.comment.findUnique({ where: { programmeId_number: { programmeId, number } } })
  if (!comment) throw new Refused(`There is no comment ${number} in this programme.`)
  if (comment.resolvedAt) throw new Refused(`Comment ${number} is resolved already.`)
  return comment
}
