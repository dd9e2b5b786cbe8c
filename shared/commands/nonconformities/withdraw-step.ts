import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { STEP_NAMES } from '@/shared/nonconformities/nonconformity'
import { DEPARTMENTS } from '@/shared/plan/department'

export const withdrawStep = defineFace({
  label: 'Withdraw what was recorded about a nonconformity',
  done: 'Withdrew what was recorded about a nonconformity',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, { addedById }: { readonly addedById: string }) =>
    addedById === actor.personId || actor.departments.includes('quality')
      ? undefined
      : 'Only who recorded it, or quality, may withdraw it.',
  record: z.object({
    nonconformity: z.number(),
    kind: z.enum(['containment', 'cause', 'correction', 'corrective action', 'check']),
    text: z.string(),
    reason: z.string(),
  }),
  reads: ({ nonconformity, kind, text, reason }) => ({
    subject: `nonconformity ${nonconformity}`,
    what: `${STEP_NAMES[kind].toLowerCase()}: ${text}`,
    words: reason,
  }),
  leads: ({ nonconformity }) => ({ kind: 'nonconformity', number: nonconformity }),
})
