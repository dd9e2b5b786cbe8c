import { answerTo, OUTSIDE_WINDOW, type SignalAnswer } from '@/shared/logs/signal-answers'
import type { Log } from '@/shared/records/log'
import { dayOf } from '@/shared/logs/log-day'

/** A check of one iron: when, and whether it lay outside with the iron left in use. */
export interface CheckedIron {
  readonly at: number
  readonly isBad: boolean
}

/**
 * Days of work by hand on which the newest check of an iron lay outside and
 * nobody has answered it. Checks and days ascend.
 */
export function daysOnBadChecks(
  log: Pick<Log, 'code' | 'timeZone'>,
  checks: readonly CheckedIron[],
  { answers, days }: { readonly answers: readonly SignalAnswer[]; readonly days: readonly string[] },
): string[] {
  const open = checks.map(({ at, isBad }) => ({
    on: dayOf(log, at),
    isBad:
      isBad && answerTo(answers, { log: log.code, chartRule: OUTSIDE_WINDOW, instant: at }) === undefined,
  }))
  return days.filter((day) => open.findLast(({ on }) => on <= day)?.isBad)
}
