import { tipCheckInterval } from '@/shared/plan/limits/control-hand'
import { tipTemperature as characteristic } from '@/shared/records/characteristics/tip-temperature'
import { daysOfWork } from '@/shared/records/soldering-work'
import type { Judged } from '@/shared/rules/finding'
import { logsOf, recordsOf } from '@/shared/rules/record-source'
import { calibrations, instrumentsOnFile } from '@/shared/rules/log-record-sources'
import { rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { judgeSchedule } from '@/shared/logs/checks-on-schedule'
import { ironsChecked } from '@/shared/irons/iron-checks'

export const tipChecksOnScheduleRule = rule({
  id: 'tip-checks-on-schedule',
  title: 'Irons checked on schedule',
  why: 'Tips wear and stations drift unseen: work between two far checks rests on hope.',
  formula: 'on each day of hand work, age of the newest tip check ≤ interval',
  stage: 'control',
  version: 2,
  reads: {
    interval: tipCheckInterval,
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
        check: 'Tip check',
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
