import type { InstrumentFile } from '@/shared/instruments/calibration-status'
import { cellAt } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import { daysChecked, type Checked } from '@/shared/logs/checks-on-schedule'
import { ofEveryIron } from './of-every-iron'

/** Every iron on these logs with the days on which an instrument in calibration checked it, and the span in which it was in use. */
export function ironsChecked(logs: readonly Log[], file: InstrumentFile): Checked[] {
  const irons = ofEveryIron(logs, (log, iron, rows) => ironChecks(log, iron, rows, file))
  const earliest = irons.map(({ checks }) => checks[0] ?? '9999-12-31').sort()[0]
  // A new iron counts from its first check; but someone's iron did the work before any was checked.
  return irons.map((iron) => (iron.checks[0] === earliest ? iron : { ...iron, from: iron.checks[0] }))
}

function ironChecks(log: Log, iron: string, rows: readonly number[], file: InstrumentFile): Checked {
  const instants = rows.map((row) => cellAt(log, 'at', row)).filter(Number.isFinite)
  const checks = daysChecked(log, instants, file)
  const last = rows[rows.length - 1]
  const withdrawn = last !== undefined && log.readings.columns['state']?.[last] === 'withdrawn'
  return {
    subject: `iron ${iron}`,
    about: { log: log.code, iron },
    checks,
    until: withdrawn ? checks[checks.length - 1] : undefined,
  }
}
