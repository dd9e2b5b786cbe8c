import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { recordKindName } from '@/shared/commands/named'
import { recordsInBrief } from '@/shared/commands/records/records-in-brief'
import { keeps } from '@/shared/commands/records/keepers'
import { ofWorks, recordedWorks, recordPlace } from '@/shared/commands/records/kept-where'
import { DEPARTMENTS } from '@/shared/plan/department'
import type { RecordKind } from '@/shared/records/record-kind'

export const withdrawRecord = defineFace({
  label: 'Withdraw a record',
  done: 'Withdrew a record',
  may: { scope: 'programme', worksToo: ['people', 'machine', 'supplier'], departments: DEPARTMENTS },
  refuses: (actor: Actor, kind: Pick<RecordKind, 'departments'>) =>
    keeps(actor, kind) ? undefined : 'Only a department that keeps this kind of record may withdraw one.',
  record: z.object({
    works: recordedWorks,
    kind: z.string(),
    data: z.record(z.string(), z.unknown()),
    reason: z.string(),
  }),
  reads: ({ works, kind, data, reason }) => ({
    subject: `${recordKindName(kind)}${ofWorks(works)}`,
    what: recordsInBrief(kind, [data]),
    words: reason,
  }),
  leads: ({ works, kind }) => recordPlace(works, { kind: 'records', recordKind: kind }),
})
