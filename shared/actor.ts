import type { Department } from '@/shared/plan/department'

/** Whom a command is asked by: department memberships are those of the programme in question. */
export interface Actor {
  readonly personId: string
  readonly name: string
  readonly departments: readonly Department[]
  readonly leads: boolean
  readonly auditor: boolean
  readonly administrator: boolean
}
