import type { SignedIn } from '@/lib/auth/session'
import type { Actor } from '@/shared/actor'

/** The person as the works know them: by the department in which they belong to the works. */
export const worksActor = ({
  personId,
  name,
  auditor,
  administrator,
  worksDepartment,
}: Pick<SignedIn, 'personId' | 'name' | 'auditor' | 'administrator' | 'worksDepartment'>): Actor => ({
  personId,
  name,
  auditor,
  administrator,
  departments: worksDepartment === null ? [] : [worksDepartment],
  leads: false,
})
