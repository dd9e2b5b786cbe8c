import type { Context } from '@/lib/commands/command'
import { programmeCode, worksSubject } from '@/lib/commands/inputs'

/** Of which lot: at the supplier it was received from, or in the programme that an earlier version recorded it in. */
export const lotRecordedIn = {
  programme: programmeCode.optional(),
  works: worksSubject.optional(),
} as const

/** The supplier, as an entry of its trail names it. */
export const atSupplier = ({ subject }: Pick<Context, 'subject'>): { readonly atSupplier?: string } =>
  subject.kind === 'supplier' ? { atSupplier: subject.code } : {}
