import type { Actor } from '@/shared/actor'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'

/** Why a person cannot sign for a department; undefined when they are of it. */
export const foreignDepartmentRefusal = (actor: Actor, department: Department): string | undefined =>
  actor.departments.includes(department)
    ? undefined
    : `You are not in ${DEPARTMENT_NAMES[department].toLowerCase()}.`
