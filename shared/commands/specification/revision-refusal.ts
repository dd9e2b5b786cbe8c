import type { Actor } from '@/shared/actor'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import type { Parameter } from '@/shared/plan/parameter'

/** Whose value it is, and what it is called. */
export type OwnedValue = Pick<Parameter, 'label' | 'owner'>

/** Why somebody may not revise a value; undefined where they may: its department does, and who leads. */
export const revisionRefusal = (actor: Actor, { label, owner }: OwnedValue): string | undefined =>
  actor.leads || actor.departments.includes(owner)
    ? undefined
    : `${label} belongs to ${DEPARTMENT_NAMES[owner].toLowerCase()}. Ask them with an action.`
