import type { Actor } from '@/shared/actor'

/** A review as far as it decides who may. */
export interface RunningReview {
  readonly number: number
  readonly chairId: string
  readonly chair: string
}

/** Why somebody may not do what is the chair's. */
export const chairRefusal = (actor: Actor, { number, chairId, chair }: RunningReview): string | undefined =>
  actor.personId === chairId ? undefined : `${chair} chairs review ${number} and closes it.`
