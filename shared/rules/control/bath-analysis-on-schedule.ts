import { bathAnalysisInterval } from '@/shared/plan/limits/control-bath'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { bathComposition as characteristic } from '@/shared/records/characteristics/bath-composition'
import { daysOfWork } from '@/shared/records/soldering-work'
import type { Judged } from '@/shared/rules/finding'
import { notApplicable } from '@/shared/rules/not-applicable'
import { logsOf, recordsOf } from '@/shared/rules/record-source'
import { calibrations, instrumentsOnFile } from '@/shared/rules/log-record-sources'
import { optional, rule } from '@/shared/rules/rule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { daysChecked, judgeSchedule } from '@/shared/logs/checks-on-schedule'
import { keepsBath } from '@/shared/plan/soldering-baths'

export const bathAnalysisOnScheduleRule = rule({
  id: 'bath-analysis-on-schedule',
  title: 'Bath analysed on schedule',
  why: 'Contaminants build up with every board; an old analysis says what the bath was, not what it is.',
  formula: 'on each day of soldering, age of the newest analysis ≤ interval',
  stage: 'control',
  version: 2,
  reads: {
    process: optional(solderingProcess),
    interval: bathAnalysisInterval,
    logs: logsOf(characteristic),
    runs: recordsOf('soldering-run', 'soldering runs'),
    instruments: instrumentsOnFile,
    calibrations,
  },
  judge({ process, interval, logs, runs, ...file }): Judged {
    if (!keepsBath(process)) return notApplicable('No solder bath is kept in this programme.')
    const subjects = logs
      .filter(({ readings }) => readings.count > 0)
      .map((log) => ({
        subject: `log ${log.code}`,
        about: { log: log.code },
        checks: daysChecked(
          log,
          (log.readings.columns['at'] ?? []).filter((at): at is number => typeof at === 'number'),
          file,
        ),
      }))
    return {
      ...judgeSchedule({
        check: 'Bath analysis',
        subjects,
        days: daysOfWork(runs, ['machine-soldering']),
        maxDays: interval.value,
        document: governingName(interval),
        work: 'soldering by machine',
      }),
      sources: [sourceOf(interval)],
    }
  },
})
