import { database } from '@/lib/db/client'
import type { Prisma } from '@/lib/db/generated/client'
import { namesOf } from '@/lib/programme/names-of'
import { correctionsOf } from '@/lib/queries/corrections'
import type { Correction } from '@/shared/records/correction'
import type { TrailKind } from '@/shared/works/works-kind'

/** Where a record was made, by whom, and what became of it. */
export interface History {
  readonly id: string
  readonly recordedIn: { readonly kind: TrailKind; readonly code: string }
  readonly recorded: { readonly by: string; readonly at: string }
  readonly withdrawn: { readonly at: string; readonly why: string } | null
  readonly corrections: readonly Correction[]
}

/** A record with its history; its values are those that stand. */
export interface Recorded {
  readonly kind: string
  readonly values: Readonly<Record<string, unknown>>
  readonly history: History
}

/** Records with what became of them, withdrawn ones among them, oldest first: three statements. */
export async function readRecorded(where: Prisma.RecordWhereInput): Promise<Recorded[]> {
  const rows = await database().record.findMany({
    where,
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    include: { subject: { select: { kind: true, code: true } } },
  })
  const [corrections, nameOf] = await Promise.all([
    correctionsOf(rows.map(({ id }) => id)),
    namesOf(
      database(),
      rows.map(({ addedById }) => addedById),
    ),
  ])
  return rows.map(({ id, kind, data, subject, addedById, at, withdrawnAt, withdrawnWhy }) => {
    const own = corrections.get(id) ?? []
    return {
      kind,
      values: (own.at(-1)?.after ?? data) as Recorded['values'],
      history: {
        id,
        recordedIn: { kind: subject.kind as TrailKind, code: subject.code },
        recorded: { by: nameOf(addedById), at: at.toISOString() },
        withdrawn: withdrawnAt && { at: withdrawnAt.toISOString(), why: withdrawnWhy ?? '' },
        corrections: own,
      },
    }
  })
}
