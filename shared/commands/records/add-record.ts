import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { gatesShutInWords, recordedGatesShut } from '@/shared/commands/gates-shut'
import { recordKindName } from '@/shared/commands/named'
import { recordsInBrief } from '@/shared/commands/records/records-in-brief'
import { keeps } from '@/shared/commands/records/keepers'
import { ofWorks, recordedWorks, recordPlace } from '@/shared/commands/records/kept-where'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import type { RecordKind } from '@/shared/records/record-kind'

export const addRecord = defineFace({
  label: 'Add a record',
  done: 'Added a record',
  may: { scope: 'programme', worksToo: ['people', 'machine', 'supplier'], departments: DEPARTMENTS },
  refuses: (actor: Actor, kind: Pick<RecordKind, 'label' | 'departments'>) =>
    keeps(actor, kind)
      ? undefined
      : `${kind.departments.map((department) => DEPARTMENT_NAMES[department]).join(' or ')} keeps this kind of record (${kind.label}).`,
  record: z.object({
    works: recordedWorks,
    kind: z.string(),
    records: z.array(z.record(z.string(), z.unknown())),
    gatesShut: recordedGatesShut,
  }),
  reads: ({ works, kind, records, gatesShut }) => ({
    subject: `${recordKindName(kind)}${ofWorks(works)}`,
    what: [recordsInBrief(kind, records), gatesShutInWords(gatesShut)].filter(Boolean).join('; '),
  }),
  leads: ({ works, kind }) => recordPlace(works, { kind: 'records', recordKind: kind }),
})
