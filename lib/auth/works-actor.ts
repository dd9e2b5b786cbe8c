import type { SignedIn } from '@/lib/auth/session'
import type { Actor } from '@/shared/actor'

/** The person as what the works keep knows them: by their department there. */
export const worksActor = ({ personId, name, auditor, administrator, worksDepartment }: SignedIn): Actor => ({
  personId,
  name,
  auditor,
  administrator,
  departments: worksDepartment === null ? [] : [worksDepartment],
  leads: false,
})
