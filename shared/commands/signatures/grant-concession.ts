import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { ruleName } from '@/shared/commands/named'
import { foreignDepartmentRefusal } from '@/shared/commands/own-department'
import { boundsInWords, concessionBounds } from '@/shared/commands/signatures/concession-bounds'
import {
  concessionInWords,
  departureInWords,
  recordedDeparture,
} from '@/shared/commands/signatures/departure-in-words'
import type { ConcessionEntry } from '@/shared/gate/programme-state'
import { concessionGrantRefusal } from '@/shared/gate/separation'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'

interface Granting {
  readonly department: Department
  readonly concession: ConcessionEntry
}

export const grantConcession = defineFace({
  label: 'Grant a concession or deviation permit',
  done: 'Granted a concession or deviation permit',
  may: { scope: 'programme', departments: ['design', 'quality'], signature: true },
  refuses: (actor: Actor, { department, concession }: Granting) =>
    foreignDepartmentRefusal(actor, department) ??
    concessionGrantRefusal(concession, actor.personId, department),
  record: z.object({
    concession: z.number(),
    rule: z.string(),
    department: z.enum(DEPARTMENTS),
    why: z.string(),
    // Entries of before there were deviation permits say nothing of one.
    permit: recordedDeparture.nullish(),
    ...concessionBounds.shape,
  }),
  reads: ({ concession, rule, department, why, permit, ...bounds }) => ({
    subject: `${concessionInWords(concession, permit)}, ${ruleName(rule)}`,
    what: [
      `For ${DEPARTMENT_NAMES[department]}.`,
      permit ? departureInWords(permit) : '',
      boundsInWords(bounds),
    ]
      .filter(Boolean)
      .join(' '),
    words: why,
  }),
  leads: ({ concession }) => ({ kind: 'concession', number: concession }),
})
