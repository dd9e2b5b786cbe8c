import type { Transaction } from '@/lib/db/transaction'
import type { TrailKind } from '@/shared/works/works-kind'

/** Notes what a trail about to begin is about; before any row that the trail tells of. */
export async function openSubject(
  tx: Transaction,
  subject: { readonly id: string; readonly kind: TrailKind; readonly code: string },
): Promise<void> {
  await tx.trailSubject.create({ data: subject })
}
