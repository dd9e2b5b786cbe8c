import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { byNotice, parameterName } from '@/shared/commands/named'
import { recordedValue } from '@/shared/commands/recorded-value'
import { revisionInBrief } from '@/shared/commands/specification/revision-in-brief'
import { DEPARTMENT_NAMES, DEPARTMENTS } from '@/shared/plan/department'
import type { Parameter } from '@/shared/plan/parameter'

export const reviseParameter = defineFace({
  label: 'Revise a specified value',
  done: 'Revised a specified value',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  refuses: (actor: Actor, { label, owner }: Pick<Parameter, 'label' | 'owner'>) =>
    actor.leads || actor.departments.includes(owner)
      ? undefined
      : `${label} belongs to ${DEPARTMENT_NAMES[owner].toLowerCase()}. Ask them with an action.`,
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
