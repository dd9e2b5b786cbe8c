import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import { counted } from '@/shared/quantity/counted'
import { foreignDepartmentRefusal } from '@/shared/commands/own-department'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'
import { STAGES } from '@/shared/plan/stage'

export const approveItems = defineFace({
  label: 'Approve several items with one signature',
  done: 'Signed a list of approvals',
  may: { scope: 'programme', departments: DEPARTMENTS, signature: true },
  /** Whether each item may be signed is said beside the item: see `approvalRefusal`. */
  refuses: (actor: Actor, { department }: { readonly department: Department }) =>
    foreignDepartmentRefusal(actor, department),
  record: z.object({
    department: z.enum(DEPARTMENTS),
    stage: z.enum(STAGES).nullable(),
    approvals: z.array(z.object({ item: z.string(), confirms: z.boolean() })),
    comment: z.string(),
  }),
  reads: ({ department, approvals, comment }) => {
    const confirmed = approvals.filter(({ confirms }) => confirms).length
    return {
      subject: `${counted(approvals.length, 'item', 'items')} for ${DEPARTMENT_NAMES[department]}`,
      what: [
        approvals.map(({ item }) => itemName(item)).join(', '),
        ...(confirmed > 0 ? [`${confirmed} of them confirmed after a change`] : []),
      ].join('; '),
      words: comment,
    }
  },
  leads: ({ stage }) => ({ kind: 'sign list', ...(stage && { stage }) }),
})
