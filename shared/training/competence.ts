import { daysBetween } from '@/shared/quantity/calendar'
import { trainingValidity } from '@/shared/rules/people-current'
import type { RecordOf } from '@/shared/records/record-kinds'

export type Training = RecordOf<'training'>

/** Shown as running out for so many days before. */
export const NOTICE_DAYS = 60

export const COMPETENCES = ['current', 'runs out', 'lapsed', 'never'] as const
export type Competence = (typeof COMPETENCES)[number]

/** Whether somebody may do something on a day, and until when they may or could. */
export interface Held {
  readonly competence: Competence
  /** The last day, 'YYYY-MM-DD'; null where they never passed. */
  readonly until: string | null
}

/** How one person stands in one skill on a day, by all that they passed in it; `maxMonths` is how long an examination is good. */
export function heldOn(passed: readonly Training[], today: string, maxMonths: number): Held {
  const until = passed
    .map((training) => trainingValidity(training, maxMonths).to)
    .sort()
    .at(-1)
  if (until === undefined) return { competence: 'never', until: null }
  if (until < today) return { competence: 'lapsed', until }
  return { competence: daysBetween(today, until) <= NOTICE_DAYS ? 'runs out' : 'current', until }
}
