import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { actionNamed } from '@/shared/commands/actions/answered'
import { originInWords, originRecord } from '@/shared/commands/actions/origin'
import { defineFace } from '@/shared/commands/face'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'

export const askAction = defineFace({
  label: 'Ask another department',
  done: 'Asked another department',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, { from }: { readonly from: Department }) =>
    actor.departments.includes(from) ? undefined : 'You ask for a department you belong to.',
  record: z.object({
    number: z.number(),
    itemKey: z.string(),
    from: z.enum(DEPARTMENTS),
    to: z.enum(DEPARTMENTS),
    /** The name of the person asked; entries of an earlier version name nobody and no study. */
    askedOf: z.string().nullish(),
    study: z.number().nullish(),
    kind: z.string(),
    question: z.string(),
    dueOn: z.string(),
    /** The line of minutes or the comment that it came from; older entries know of none. */
    bornOf: originRecord.nullish(),
  }),
  reads: ({ number, itemKey, from, to, askedOf, study, kind, question, dueOn, bornOf }) => ({
    subject: actionNamed(number, itemKey),
    what: `${[
      `${DEPARTMENT_NAMES[from]} asks ${DEPARTMENT_NAMES[to]}${askedOf ? ` (${askedOf})` : ''} about ${kind}, by ${dueOn}`,
      ...(study ? [`in study ${study}`] : []),
    ].join(', ')}${originInWords(bornOf)}`,
    words: question,
  }),
  leads: ({ number }) => ({ kind: 'action', number }),
})
