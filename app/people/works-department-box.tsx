import { PickBox } from '@/app/forms/fields'
import { WORKS_DEPARTMENT_CHOICES } from '@/app/people/works-departments'
import type { Department } from '@/shared/plan/department'

/** In which department of the works somebody belongs; a programme's departments are given in the programme. */
export const WorksDepartmentBox = ({ now }: { now?: Department | null }) => (
  <PickBox
    name="worksDepartment"
    label="Department in the works"
    hint="For what is kept once for all programmes; an auditor or administrator has none."
    choices={WORKS_DEPARTMENT_CHOICES}
    defaultValue={now ?? ''}
  />
)
