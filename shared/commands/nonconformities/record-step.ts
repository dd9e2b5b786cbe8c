import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { STEP_NAMES, type StepKind } from '@/shared/nonconformities/nonconformity'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'

interface StepTaken {
  readonly number: number
  readonly owner: Department
  readonly kind: StepKind
  /** Who recorded the newest correction. */
  readonly correctedById: string | undefined
}

export const recordStep = defineFace({
  label: 'Record what was done about a nonconformity',
  done: 'Recorded what was done about a nonconformity',
  may: { scope: 'programme', departments: DEPARTMENTS },
  separates: true,
  refuses: (actor: Actor, { number, owner, kind, correctedById }: StepTaken) => {
    if (kind === 'check')
      return actor.personId === correctedById
        ? 'You recorded the correction yourself. Somebody else checks that it helped.'
        : undefined
    return actor.departments.includes(owner) || actor.departments.includes('quality')
      ? undefined
      : `${DEPARTMENT_NAMES[owner]} sees to nonconformity ${number}; quality may record for them.`
  },
  record: z.object({
    nonconformity: z.number(),
    kind: z.enum(['containment', 'cause', 'correction', 'corrective action', 'check']),
    text: z.string(),
    doneOn: z.string(),
    helped: z.boolean().nullable(),
  }),
  reads: ({ nonconformity, kind, text, doneOn, helped }) => ({
    subject: `nonconformity ${nonconformity}`,
    what: `${STEP_NAMES[kind].toLowerCase()}${helped === null ? '' : helped ? ': it did' : ': it did not'}, ${doneOn}`,
    words: text,
  }),
  leads: ({ nonconformity }) => ({ kind: 'nonconformity', number: nonconformity }),
})
