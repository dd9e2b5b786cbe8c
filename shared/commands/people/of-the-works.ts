import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'

/** ", Quality of the works", where a person belongs to one of its departments. */
export const ofTheWorks = (department: string | null | undefined): string =>
  department ? `, ${DEPARTMENT_NAMES[department as Department] ?? department} of the works` : ''
