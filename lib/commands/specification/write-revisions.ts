import type { Transaction } from '@/lib/db/transaction'

interface RevisionToWrite {
  readonly parameter: string
  readonly number: number
  readonly value: unknown
  readonly reason: string
}

interface Written {
  readonly programmeId: string
  readonly authorId: string
  /** RFC 3339 */
  readonly at: string
  /** The change notice that they came by. */
  readonly notice?: number
}

/** Writes revisions of parameters, all by one person and at one time. */
export const writeRevisions = (
  tx: Transaction,
  revisions: readonly RevisionToWrite[],
  { programmeId, authorId, at, notice }: Written,
): Promise<unknown> =>
  tx.revision.createMany({
    data: revisions.map(({ parameter, number, value, reason }) => ({
      programmeId,
      parameter,
      number,
      value: value as object,
      reason,
      authorId,
      at,
      ...(notice !== undefined && { notice }),
    })),
  })
