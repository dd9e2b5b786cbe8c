import type { BatchReadings } from '@/lib/programme/readings-cache'
import type { LogWithSubject } from '@/lib/programme/works/shared-logs'
import { works } from '@/lib/settings/works'
import { readingsForRuns } from '@/shared/logs/readings-for-runs'
import { runDaysOf } from '@/shared/logs/run-days'
import type { Log } from '@/shared/records/log'
import { findCharacteristic } from '@/shared/records/characteristics'
import type { SolderingRun } from '@/shared/records/soldering-work'
import { logName } from '@/shared/works/log-name'

interface For {
  readonly programme: { readonly id: string; readonly code: string }
  readonly runs: readonly SolderingRun[]
  readonly readings: BatchReadings
}

/**
 * A log as one programme reads it. What was recorded in the programme itself, or taken of its boards alone, counts whole;
 * what a shared machine logged counts for the runs that the programme made there.
 */
export function logFor(row: LogWithSubject, { programme, runs, readings }: For): Log {
  const { timeZone } = works()
  const { id, line, machine, characteristic, instrumentId } = row
  const runDays = runDaysOf({ line, machine, timeZone }, runs)
  const speaks = findCharacteristic(characteristic)?.speaks ?? 'of the day of a run'
  const isOwn = (trailId: string): boolean => trailId === programme.id || row.onlyForId === programme.id
  return {
    id,
    code: logName(row.code, row.subject, programme.code),
    characteristic,
    timeZone,
    line,
    machine,
    instrumentId,
    ...(row.atMachine && { atWorks: { machine: row.atMachine.code, log: logName(row.code, row.subject) } }),
    readings: readings.ofLog(id, {
      isOwn,
      key: `${speaks} ${timeZone} ${runDays.map(({ day, begunAt }) => `${day} ${begunAt ?? ''}`).join()}`,
      cut: (all) => readingsForRuns(all, runDays, speaks, { timeZone }),
    }),
  }
}
