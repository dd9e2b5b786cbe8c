import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { recordKindName } from '@/shared/commands/named'
import { recordsInBrief } from '@/shared/commands/records/records-in-brief'
import { keeps } from '@/shared/commands/records/keepers'
import { DEPARTMENTS } from '@/shared/plan/department'
import type { RecordKind } from '@/shared/records/record-kind'

export const withdrawRecord = defineFace({
  label: 'Withdraw a record',
  done: 'Withdrew a record',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, kind: Pick<RecordKind, 'departments'>) =>
    keeps(actor, kind) ? undefined : 'Only a department that keeps this kind of record may withdraw one.',
  record: z.object({
    kind: z.string(),
    data: z.record(z.string(), z.unknown()),
    reason: z.string(),
  }),
  reads: ({ kind, data, reason }) => ({
    subject: recordKindName(kind),
    what: recordsInBrief(kind, [data]),
    words: reason,
  }),
  leads: ({ kind }) => ({ kind: 'records', recordKind: kind }),
})
