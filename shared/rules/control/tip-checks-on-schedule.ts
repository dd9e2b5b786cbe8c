import { tipCheckInterval } from '@/shared/plan/limits/control-hand'
import { dateOf } from '@/shared/quantity/calendar'
import { tipTemperature as characteristic } from '@/shared/records/characteristics/tip-temperature'
import { cellAt } from '@/shared/records/log-series'
import type { Log } from '@/shared/records/log'
import { rowsByText } from '@/shared/records/readings-by-text'
import { daysOfWork } from '@/shared/records/soldering-work'
import type { Judged } from '@/shared/rules/finding'
import { logsOf, recordsOf } from '@/shared/rules/record-source'
import { rule } from '@/shared/rules/rule'
import { namedRuling, sourceOf } from '@/shared/rules/ruling-source'
import { judgeSchedule, type Checked } from './checks-on-schedule'

export const tipChecksOnScheduleRule = rule({
  id: 'tip-checks-on-schedule',
  title: 'Irons checked on schedule',
  why: 'Tips wear and stations drift unseen: work between two far checks rests on hope.',
  stage: 'control',
  version: 1,
  reads: {
    interval: tipCheckInterval,
    logs: logsOf(characteristic),
    runs: recordsOf('soldering-run', 'soldering runs'),
  },
  judge({ interval, logs, runs }): Judged {
    const irons = logs.flatMap((log) =>
      [...rowsByText(log, 'iron')].map(([iron, rows]) => ironChecks(log, iron, rows)),
    )
    const earliest = irons.map(({ checks }) => checks[0] ?? '9999-12-31').sort()[0]
    const days = daysOfWork(runs, ['hand-soldering', 'rework'])
    // A new iron counts from its first check; but someone's iron did the work before any was checked.
    const subjects = irons.map((iron) =>
      iron.checks[0] === earliest ? iron : { ...iron, from: iron.checks[0] },
    )
    return {
      ...judgeSchedule({
        check: 'Tip check',
        subjects,
        days,
        mostDays: interval.value,
        document: namedRuling(interval),
        work: 'hand soldering or rework',
      }),
      sources: [sourceOf(interval)],
      notes: [
        'Every iron on the log is taken to be in use on every day of hand work; take a spare off the log.',
      ],
    }
  },
})

function ironChecks(log: Log, iron: string, rows: readonly number[]): Checked {
  const checks = rows
    .map((row) => cellAt(log, 'at', row))
    .filter(Number.isFinite)
    .map(dateOf)
  const last = rows[rows.length - 1]
  const withdrawn = last !== undefined && log.readings.columns['state']?.[last] === 'withdrawn'
  return { subject: `iron ${iron}`, checks, until: withdrawn ? checks[checks.length - 1] : undefined }
}
