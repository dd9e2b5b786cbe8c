import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { ruleName } from '@/shared/commands/named'
import { foreignDepartmentRefusal } from '@/shared/commands/own-department'
import { boundsInWords, concessionBounds } from '@/shared/commands/signatures/concession-bounds'
import type { ConcessionEntry } from '@/shared/gate/programme-state'
import { concessionGrantRefusal } from '@/shared/gate/separation'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'

interface Granting {
  readonly department: Department
  readonly concession: ConcessionEntry
}

export const grantConcession = defineFace({
  label: 'Grant a concession',
  done: 'Granted a concession',
  may: { scope: 'programme', departments: ['design', 'quality'], signature: true },
  refuses: (actor: Actor, { department, concession }: Granting) =>
    foreignDepartmentRefusal(actor, department) ??
    concessionGrantRefusal(concession, actor.personId, department),
  record: z.object({
    concession: z.number(),
    rule: z.string(),
    department: z.enum(DEPARTMENTS),
    why: z.string(),
    ...concessionBounds.shape,
  }),
  reads: ({ concession, rule, department, why, ...bounds }) => ({
    subject: `concession ${concession}, ${ruleName(rule)}`,
    what: `For ${DEPARTMENT_NAMES[department]}. ${boundsInWords(bounds)}`.trim(),
    words: why,
  }),
  leads: ({ concession }) => ({ kind: 'concession', number: concession }),
})
