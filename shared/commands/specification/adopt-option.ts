import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { costLineRecord } from '@/shared/commands/cost-line-record'
import { parameterName } from '@/shared/commands/named'
import { counted } from '@/shared/quantity/counted'
import { recordedValue } from '@/shared/commands/recorded-value'
import { statedInWords, statedLimitRecord } from '@/shared/commands/specification/alternative-record'
import { revisionInBrief } from '@/shared/commands/specification/revision-in-brief'
import { lineInWords } from '@/shared/gate/answer-in-words'
import { adoptionRefusal, type Adopting } from '@/shared/gate/option-study'
import { DEPARTMENTS } from '@/shared/plan/department'

export const adoptOption = defineFace({
  label: 'Adopt an option',
  done: 'Adopted an option',
  may: { scope: 'programme', departments: DEPARTMENTS, lead: true },
  refuses: (actor: Actor, adopting: Adopting) => adoptionRefusal(adopting, actor),
  record: z.object({
    study: z.number(),
    title: z.string(),
    adopted: z.string(),
    reason: z.string(),
    revisions: z.array(z.object({ parameter: z.string(), value: recordedValue, before: recordedValue })),
    /** Entries of an earlier version state no limits and say nothing of costs. */
    requirements: z.array(statedLimitRecord).optional(),
    costs: z.array(costLineRecord.extend({ action: z.number().nullable() })).optional(),
    unknown: z.number().optional(),
  }),
  reads: ({ study, title, adopted, reason, revisions, requirements = [], costs = [], unknown = 0 }) => ({
    subject: `study ${study}, ${title}`,
    what: [
      adopted,
      ...revisions.map(
        ({ parameter, value, before }) =>
          `${parameterName(parameter)}: ${revisionInBrief(parameter, before, value)}`,
      ),
      ...requirements.map(statedInWords),
      ...costs.map(
        ({ action, ...line }) =>
          `${lineInWords({ ...line, alternative: null })}${action === null ? '' : `, by action ${action}`}`,
      ),
      ...(unknown > 0 ? [`${counted(unknown, 'figure', 'figures')} of its cost not known`] : []),
    ].join('; '),
    words: reason,
  }),
  leads: ({ study }) => ({ kind: 'study', number: study }),
})
