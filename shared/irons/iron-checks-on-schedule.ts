import type { Limit } from '@/shared/plan/requirement'
import type { Characteristic } from '@/shared/records/characteristic'
import { daysOfHandWork } from '@/shared/records/soldering-work'
import { judgeSchedule } from '@/shared/logs/checks-on-schedule'
import { governingName, sourceOf } from '@/shared/rules/governing-source'
import { calibrations, instrumentsOnFile } from '@/shared/rules/log-record-sources'
import { logsOf, recordsOf } from '@/shared/rules/record-source'
import { rule, type Rule } from '@/shared/rules/rule'
import { ironsChecked } from './iron-checks'

/** What tells one such rule from another. */
interface IronChecks extends Pick<Rule, 'id' | 'title' | 'why' | 'formula' | 'version'> {
  /** "Tip check", as the finding names it. */
  readonly check: string
  /** The oldest that the newest check may be on a day of hand work, days. */
  readonly interval: Limit
  readonly characteristic: Characteristic
}

/** A rule that holds the checks of every iron on a kind of log against the days of work by hand. */
export const ironChecksOnSchedule = ({ check, interval, characteristic, ...named }: IronChecks) =>
  rule({
    ...named,
    stage: 'control',
    reads: {
      interval,
      logs: logsOf(characteristic),
      runs: recordsOf('soldering-run', 'soldering runs'),
      instruments: instrumentsOnFile,
      calibrations,
    },
    judge: ({ interval: governing, logs, runs, ...file }) => ({
      ...judgeSchedule({
        check,
        subjects: ironsChecked(logs, file),
        days: daysOfHandWork(runs),
        maxDays: governing.value,
        document: governingName(governing),
        work: 'hand soldering or rework',
      }),
      sources: [sourceOf(governing)],
      notes: [
        'Every iron on the log is taken to be in use on every day of hand work; take a spare off the log.',
        'A check by an instrument out of calibration then counts as none.',
      ],
    }),
  })
