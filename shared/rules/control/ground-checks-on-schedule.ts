import { groundCheckInterval } from '@/shared/plan/limits/control-hand'
import { tipGround as characteristic } from '@/shared/records/characteristics/tip-ground'
import { daysOfWork } from '@/shared/records/soldering-work'
import type { Judged } from '@/shared/rules/finding'
import { logsOf, recordsOf } from '@/shared/rules/record-source'
import { calibrations, instrumentsOnFile } from '@/shared/rules/log-record-sources'
import { rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { judgeSchedule } from '@/shared/logs/checks-on-schedule'
import { ironsChecked } from '@/shared/irons/iron-checks'

export const groundChecksOnScheduleRule = rule({
  id: 'ground-checks-on-schedule',
  title: 'Ground of irons checked on schedule',
  why: 'A broken earth lead shows on no display; parts that leakage or static harms fail later, in service.',
  formula: 'on each day of hand work, age of the newest ground check ≤ interval',
  stage: 'control',
  version: 2,
  reads: {
    interval: groundCheckInterval,
    logs: logsOf(characteristic),
    runs: recordsOf('soldering-run', 'soldering runs'),
    instruments: instrumentsOnFile,
    calibrations,
  },
  judge({ interval, logs, runs, ...file }): Judged {
    const days = daysOfWork(runs, ['hand-soldering', 'rework'])
    const subjects = ironsChecked(logs, file)
    return {
      ...judgeSchedule({
        check: 'Ground check',
        subjects,
        days,
        maxDays: interval.value,
        document: governingName(interval),
        work: 'hand soldering or rework',
      }),
      sources: [sourceOf(interval)],
      notes: [
        'Every iron on the log is taken to be in use on every day of hand work; take a spare off the log.',
        'A check by an instrument out of calibration then counts as none.',
      ],
    }
  },
})
