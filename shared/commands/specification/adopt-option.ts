import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { parameterName } from '@/shared/commands/named'
import { recordedValue } from '@/shared/commands/recorded-value'
import { revisionInBrief } from '@/shared/commands/specification/revision-in-brief'
import { adoptionRefusal } from '@/shared/gate/option-study'
import { DEPARTMENTS } from '@/shared/plan/department'
import type { ItemDefinition } from '@/shared/catalogue/item'

interface Adopting {
  readonly item: Pick<ItemDefinition, 'title' | 'owner'>
  /** The values it would change, by parameter. */
  readonly changes: ReadonlyMap<string, unknown>
}

export const adoptOption = defineFace({
  label: 'Adopt an option',
  done: 'Adopted an option',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  refuses: (actor: Actor, { item, changes }: Adopting) => adoptionRefusal(item, changes, actor),
  record: z.object({
    study: z.number(),
    title: z.string(),
    adopted: z.string(),
    reason: z.string(),
    revisions: z.array(z.object({ parameter: z.string(), value: recordedValue, before: recordedValue })),
  }),
  reads: ({ study, title, adopted, reason, revisions }) => ({
    subject: `study ${study}, ${title}`,
    what: [
      adopted,
      ...revisions.map(
        ({ parameter, value, before }) =>
          `${parameterName(parameter)}: ${revisionInBrief(parameter, before, value)}`,
      ),
    ].join('; '),
    words: reason,
  }),
  leads: ({ study }) => ({ kind: 'study', number: study }),
})
