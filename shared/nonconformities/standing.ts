import type { NonconformityStep } from './nonconformity'

/** How a nonconformity stands: never stored, it follows from what was recorded. */
export type Standing = 'open' | 'contained' | 'corrected' | 'checked'
export const STANDINGS: readonly Standing[] = ['open', 'contained', 'corrected', 'checked']

type Step = Pick<NonconformityStep, 'kind' | 'helped' | 'withdrawn'>

/**
 * How it stands after these steps, in the order they were recorded; withdrawn ones do not count. A check that found
 * it did not help undoes the corrections before it; whatever is corrected after a good check waits for a check of its own.
 */
export function standingOf(steps: readonly Step[]): Standing {
  let contained = false
  let corrected = false
  let checked = false
  for (const { kind, helped } of steps.filter(({ withdrawn }) => withdrawn === null)) {
    if (kind === 'containment') contained = true
    if (kind === 'correction' || kind === 'corrective action') {
      corrected = true
      checked = false
    }
    if (kind === 'check') {
      checked = corrected && helped === true
      if (helped === false) corrected = false
    }
  }
  if (checked) return 'checked'
  if (corrected) return 'corrected'
  return contained ? 'contained' : 'open'
}

/** Who recorded the newest correction that still counts: somebody else checks it. */
export const correctedById = (
  steps: readonly (Step & Pick<NonconformityStep, 'addedById'>)[],
): string | undefined =>
  steps.findLast(
    ({ kind, withdrawn }) => withdrawn === null && (kind === 'correction' || kind === 'corrective action'),
  )?.addedById
