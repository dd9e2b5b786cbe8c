import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { correctionRecorded } from '@/shared/commands/correction-recorded'
import { defineFace } from '@/shared/commands/face'
import { recordKindName } from '@/shared/commands/named'
import { keeps } from '@/shared/commands/records/keepers'
import { ownMember } from '@/shared/own-member'
import { ofWorks, recordedWorks, recordPlace } from '@/shared/commands/records/kept-where'
import { DEPARTMENTS } from '@/shared/plan/department'
import { correctedInWords, fieldsCorrected } from '@/shared/records/correction'
import type { RecordKind } from '@/shared/records/record-kind'
import { RECORD_KINDS } from '@/shared/records/record-kinds'

export const correctRecord = defineFace({
  label: 'Correct a record',
  done: 'Corrected a record',
  may: { scope: 'programme', worksToo: ['people', 'machine', 'supplier'], departments: DEPARTMENTS },
  refuses: (actor: Actor, kind: Pick<RecordKind, 'departments'>) =>
    keeps(actor, kind) ? undefined : 'Only a department that keeps this kind of record may correct one.',
  record: z.object({
    works: recordedWorks,
    kind: z.string(),
    subjectId: z.string(),
    ...correctionRecorded.shape,
  }),
  reads: ({ works, kind, before, after, reason }) => {
    const known: RecordKind | undefined = ownMember(RECORD_KINDS, kind)
    return {
      subject: `${recordKindName(kind)}${ofWorks(works)}`,
      what: correctedInWords(fieldsCorrected(known?.columns ?? {}, before, after)),
      words: reason,
    }
  },
  leads: ({ works, kind, subjectId }) =>
    recordPlace(works, { kind: 'record', recordKind: kind, record: subjectId }),
})
