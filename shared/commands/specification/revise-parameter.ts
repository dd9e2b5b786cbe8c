import { z } from 'zod'
import { defineFace } from '@/shared/commands/face'
import { byNotice, parameterName } from '@/shared/commands/named'
import { recordedValue } from '@/shared/commands/recorded-value'
import { revisionInBrief } from '@/shared/commands/specification/revision-in-brief'
import { revisionRefusal } from '@/shared/commands/specification/revision-refusal'
import { DEPARTMENTS } from '@/shared/plan/department'

export const reviseParameter = defineFace({
  label: 'Revise a specified value',
  done: 'Revised a specified value',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  refuses: revisionRefusal,
  record: z.object({
    parameter: z.string(),
    revision: z.number(),
    value: recordedValue,
    before: recordedValue,
    reason: z.string(),
    /** The change notice that brought it. */
    notice: z.number().optional(),
  }),
  reads: ({ parameter, revision, value, before, reason, notice }) => ({
    subject: `${parameterName(parameter)}, revision ${revision}`,
    what: `${revisionInBrief(parameter, before, value)}${byNotice(notice)}`,
    words: reason,
  }),
  leads: ({ parameter }) => ({ kind: 'parameter', parameter }),
})
