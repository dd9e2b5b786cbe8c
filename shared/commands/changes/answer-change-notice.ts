import { z } from 'zod'
import type { Actor } from '@/shared/actor'
import { defineFace } from '@/shared/commands/face'
import { foreignDepartmentRefusal } from '@/shared/commands/own-department'
import { answerRefusal, type NoticeStanding } from '@/shared/gate/change-notice'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'

interface Answering {
  readonly department: Department
  readonly standing: NoticeStanding
}

export const answerChangeNotice = defineFace({
  label: 'Answer a change notice',
  done: 'Answered a change notice',
  may: { scope: 'programme', departments: DEPARTMENTS },
  refuses: (actor: Actor, { department, standing }: Answering) =>
    foreignDepartmentRefusal(actor, department) ?? answerRefusal(standing, actor.personId, department),
  record: z.object({
    notice: z.number(),
    title: z.string(),
    department: z.enum(DEPARTMENTS),
    agrees: z.boolean(),
    reason: z.string(),
  }),
  reads: ({ notice, title, department, agrees, reason }) => ({
    subject: `change notice ${notice}, ${title}`,
    what: `${DEPARTMENT_NAMES[department]} ${agrees ? 'agrees' : 'objects'}`,
    words: reason,
  }),
  leads: ({ notice }) => ({ kind: 'notice', number: notice }),
})
