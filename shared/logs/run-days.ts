import type { Log } from '@/shared/records/log'
import type { SolderingRun } from '@/shared/records/soldering-work'
import { instantAtHour } from './log-day'
import { mayBeOfLog } from './run-readings'

/** A day on which a programme ran on a line, and when the earliest of its runs that states its hour began (epoch ms). */
export interface RunDay {
  /** 'YYYY-MM-DD' by the works' clock. */
  readonly day: string
  readonly begunAt: number | undefined
}

type Run = Pick<SolderingRun, 'doneOn' | 'line' | 'begunAtH'>

/**
 * The days, earliest first and each once, on which a programme ran where a log is taken. A run that names no line counts
 * for each line that the programme states: it was on one of them.
 */
export function runDaysOf(log: Pick<Log, 'line' | 'machine' | 'timeZone'>, runs: readonly Run[]): RunDay[] {
  const begun = new Map<string, number | undefined>()
  for (const run of runs) {
    if (!mayBeOfLog(run, { log })) continue
    const at = run.begunAtH === undefined ? undefined : instantAtHour(log, run.doneOn, run.begunAtH)
    const known = begun.get(run.doneOn)
    begun.set(run.doneOn, known === undefined || (at !== undefined && at < known) ? at : known)
  }
  return [...begun].sort(([a], [b]) => (a < b ? -1 : 1)).map(([day, begunAt]) => ({ day, begunAt }))
}
