import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { recordKindName } from '@/shared/commands/named'
import { keeps } from '@/shared/commands/records/keepers'
import { DEPARTMENTS } from '@/shared/plan/department'
import type { RecordKind } from '@/shared/records/record-kind'

export const withdrawRecord = defineFace({
  label: 'Withdraw a record',
  done: 'Withdrew a record',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, kind: Pick<RecordKind, 'departments'>) =>
    keeps(actor, kind) ? undefined : 'Only a department that keeps this kind of record may withdraw one.',
  record: z.object({ kind: z.string(), reason: z.string() }),
  reads: ({ kind, reason }) => ({ subject: recordKindName(kind), words: reason }),
  leads: ({ kind }) => ({ kind: 'records', recordKind: kind }),
})
