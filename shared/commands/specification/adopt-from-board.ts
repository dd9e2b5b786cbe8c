import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { parameterName } from '@/shared/commands/named'
import { revisionRefusal, type OwnedValue } from '@/shared/commands/specification/revision-refusal'
import { DEPARTMENTS } from '@/shared/plan/department'

export const adoptFromBoard = defineFace({
  label: 'Adopt values from board files',
  done: 'Adopted values from board files',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  /** All of them are the person's to revise, or none is adopted. */
  refuses: (actor: Actor, { parameters }: { readonly parameters: readonly OwnedValue[] }) =>
    parameters.map((parameter) => revisionRefusal(actor, parameter)).find((refused) => refused !== undefined),
  record: z.object({
    evidence: z.string(),
    fileName: z.string(),
    values: z.array(z.object({ parameter: z.string(), revision: z.number() })),
    reason: z.string(),
  }),
  reads: ({ fileName, values, reason }) => ({
    subject: fileName,
    what: values
      .map(({ parameter, revision }) => `${parameterName(parameter)}, revision ${revision}`)
      .join('; '),
    words: reason,
  }),
  leads: ({ evidence }) => ({ kind: 'board', evidence }),
})
