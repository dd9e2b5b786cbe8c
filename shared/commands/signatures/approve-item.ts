import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { itemName } from '@/shared/commands/named'
import { counted } from '@/shared/quantity/counted'
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
    /** Null or absent where it was given on reading. */
    confirms: z.string().nullish(),
    /** How many were signed with it. */
    list: z.number().optional(),
  }),
  reads: ({ item, title, department, comment, confirms, list }) => ({
    subject: itemName(item, title),
    what: [
      `for ${DEPARTMENT_NAMES[department]}`,
      ...(confirms ? ['confirmed after a change that leaves it as it was in substance'] : []),
      ...(list !== undefined ? [`with one signature over ${counted(list, 'item', 'items')}`] : []),
    ].join(', '),
    words: comment,
  }),
  leads: ({ item }) => ({ kind: 'item', item, part: 'approvals' }),
})
