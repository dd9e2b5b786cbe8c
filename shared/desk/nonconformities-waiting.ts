import { heldTo, type Actor } from '@/shared/actor'
import type { NonconformityStep } from '@/shared/nonconformities/nonconformity'
import { correctedById, standingOf, type Standing } from '@/shared/nonconformities/standing'
import type { Department } from '@/shared/plan/department'
import type { DeskEntry, DeskVerb } from './desk-entry'

/** As much of a nonconformity as says whom it waits for. */
export interface NonconformityAtWork {
  readonly number: number
  readonly title: string
  readonly owner: Department
  readonly steps: readonly Pick<NonconformityStep, 'kind' | 'helped' | 'addedById' | 'withdrawn'>[]
}

/** What each standing asks next; of a checked one nothing. */
const NEXT: Readonly<Record<Standing, DeskVerb | undefined>> = {
  open: 'contain',
  contained: 'correct',
  corrected: 'check that it helped',
  checked: undefined,
}

/**
 * Nonconformities that wait for a person: those of their departments until they are corrected, and their check for
 * anybody of quality or of the owner who did not correct them.
 */
export function nonconformitiesWaiting(
  actor: Actor,
  nonconformities: readonly NonconformityAtWork[],
): DeskEntry[] {
  const [own] = actor.departments
  if (!own) return []
  return nonconformities.flatMap(({ number, title, owner, steps }): DeskEntry[] => {
    const verb = NEXT[standingOf(steps)]
    const checks = verb === 'check that it helped'
    const seesToIt = actor.departments.includes(owner) || (checks && actor.departments.includes('quality'))
    const corrected = correctedById(steps)
    if (!verb || !seesToIt || (checks && corrected !== undefined && heldTo(actor).includes(corrected)))
      return []
    return [
      {
        bearing: checks ? 'others wait' : 'own work',
        verb,
        message: `Nonconformity ${number}: ${title}`,
        department: actor.departments.includes(owner) ? owner : 'quality',
        dueOn: null,
        place: { kind: 'nonconformity', number },
      },
    ]
  })
}
