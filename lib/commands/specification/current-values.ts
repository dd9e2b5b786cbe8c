import type { Transaction } from '@/lib/db/transaction'
import type { JsonValue } from '@/shared/trail/canonical-json'

/** The newest revision of each parameter of a programme, by the parameter's key. */
export async function currentValues(
  tx: Transaction,
  programmeId: string,
): Promise<ReadonlyMap<string, { readonly number: number; readonly value: JsonValue }>> {
  const rows = await tx.revision.findMany({
    where: { programmeId },
    orderBy: [{ parameter: 'asc' }, { number: 'desc' }],
    distinct: ['parameter'],
    select: { parameter: true, number: true, value: true },
  })
  return new Map(
    rows.map(({ parameter, number, value }) => [parameter, { number, value: value as JsonValue }]),
  )
}
