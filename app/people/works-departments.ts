import { COMMAND_NAMES, faceOf } from '@/shared/commands/all-faces'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'

/** The department of a member in the works, for the forms that give it. */
export const WORKS_DEPARTMENT_CHOICES = [
  { value: '', text: 'None: reads what the works keep' },
  ...DEPARTMENTS.map((value) => ({ value, text: DEPARTMENT_NAMES[value] })),
]

/** What belonging to a department allows of what the works keep, as the table of rights says it. */
export const allowedAtTheWorks = (own: Department): string[] =>
  COMMAND_NAMES.map(faceOf)
    .filter(({ may: { scope, worksToo, departments } }) =>
      scope === 'works' || worksToo ? departments?.includes(own) : false,
    )
    .map(({ label }) => label)
