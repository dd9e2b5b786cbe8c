import { requireReadings } from '@/shared/statistics/reading-checks'

/** Times (or cycles) at which units failed, and at which others were taken out unfailed. */
export interface LifeData {
  readonly failures: readonly number[]
  readonly suspensions?: readonly number[]
}

/** Checked, as plain lists. Throws RangeError for a life that is not above zero. */
export function requireLifeData({ failures, suspensions = [] }: LifeData, minFailures: number): void {
  requireReadings(failures, 'failures', minFailures)
  requireReadings(suspensions, 'suspensions', 0)
  for (const life of [...failures, ...suspensions])
    if (!(life > 0)) throw new RangeError(`A life must be above zero; ${life} is not.`)
}
