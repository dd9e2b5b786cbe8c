import { database } from '@/lib/db/client'
import { namesOf } from '@/lib/programme/names-of'

/** The ceiling as it was set last; `amount` is null where it was taken away. */
export interface CeilingSet {
  readonly number: number
  readonly amount: number | null
  readonly boards: number | null
  readonly lots: number | null
  readonly reason: string
  readonly by: string
  readonly at: string
}

/** The newest ceiling of a programme's money; undefined where none was ever set. Two statements. */
export async function readMoneyCeiling(programmeId: string): Promise<CeilingSet | undefined> {
  const row = await database().moneyCeiling.findFirst({
    where: { programmeId },
    orderBy: { number: 'desc' },
  })
  if (!row) return undefined
  const nameOf = await namesOf(database(), [row.authorId])
  const { number, amount, boards, lots, reason, at } = row
  return {
    number,
    amount,
    boards,
    lots,
    reason,
    by: nameOf(row.authorId),
    at: at.toISOString(),
  }
}
