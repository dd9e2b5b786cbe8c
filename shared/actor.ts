import type { Department } from '@/shared/plan/department'

/** Whom a command is asked by: department memberships are those of the programme in question. */
export interface Actor {
  readonly personId: string
  readonly name: string
  readonly departments: readonly Department[]
  readonly leads: boolean
  readonly auditor: boolean
  readonly administrator: boolean
  /**
   * Where the person has no part of their own in the programme: who is away, and whose departments they act in.
   * The lead's part does not pass on.
   */
  readonly standsInFor?: readonly Absent[]
}

/** Somebody who is away, and the last day of it. */
export interface Absent {
  readonly personId: string
  readonly name: string
  /** 'YYYY-MM-DD' */
  readonly until: string
}

/**
 * Everybody whose own deeds are held against what this actor decides: nobody names a person to approve in their
 * stead what they could not approve themselves.
 */
export const heldTo = ({ personId, standsInFor = [] }: Actor): readonly string[] => [
  personId,
  ...standsInFor.map((absent) => absent.personId),
]
