import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import { foreignDepartmentRefusal } from '@/shared/commands/own-department'
import type { ProgrammeState } from '@/shared/gate/programme-state'
import { approvalRefusal } from '@/shared/gate/separation'
import type { ItemState } from '@/shared/gate/item-status'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'

interface Approving {
  readonly department: Department
  readonly item: ItemState
  readonly state: ProgrammeState
}

export const approveItem = defineFace({
  label: 'Approve an item',
  done: 'Approved an item',
  may: { scope: 'programme', departments: DEPARTMENTS, signature: true },
  refuses: (actor: Actor, { department, item, state }: Approving) =>
    foreignDepartmentRefusal(actor, department) ?? approvalRefusal(item, state, actor.personId, department),
  record: z.object({
    item: z.string(),
    title: z.string(),
    department: z.enum(DEPARTMENTS),
    comment: z.string(),
  }),
  reads: ({ item, title, department, comment }) => ({
    subject: itemName(item, title),
    what: `for ${DEPARTMENT_NAMES[department]}`,
    words: comment,
  }),
  leads: ({ item }) => ({ kind: 'item', item, part: 'approvals' }),
})
