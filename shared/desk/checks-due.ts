import { groupedBy } from '@/shared/grouped-by'
import { ironSchedule } from '@/shared/irons/iron-schedule'
import { cellAt } from '@/shared/logs/log-series'
import { bathAnalysisInterval } from '@/shared/plan/limits/control-bath'
import { governingRequirement } from '@/shared/plan/requirement'
import { addDays } from '@/shared/quantity/calendar'
import { bathComposition } from '@/shared/records/characteristics/bath-composition'
import { tipGround } from '@/shared/records/characteristics/tip-ground'
import { tipTemperature } from '@/shared/records/characteristics/tip-temperature'
import type { Log } from '@/shared/records/log'
import type { Facts } from '@/shared/rules/facts'
import { dayOf } from '@/shared/logs/log-day'

/** A reading that a kept log asks for again, with the day, 'YYYY-MM-DD'. */
export interface CheckDue {
  readonly log: string
  readonly subject: string
  readonly dueOn: string
}

/**
 * The next check of every iron and bath whose log has readings, by the interval that rules. A log without readings
 * asks for nothing yet: its rule says so.
 */
export const checksDue = (facts: Facts): CheckDue[] => [
  ...logsOf(facts, tipTemperature.key).flatMap((log) => ironsDue(log, facts, 'tip')),
  ...logsOf(facts, tipGround.key).flatMap((log) => ironsDue(log, facts, 'way to ground')),
  ...logsOf(facts, bathComposition.key).flatMap((log) => analysisDue(log, facts)),
]

const logsOf = ({ records }: Facts, characteristic: string): readonly Log[] =>
  records.logs.get(characteristic) ?? []

/** The irons that are due on one day are one line. */
function ironsDue(log: Log, facts: Facts, what: string): CheckDue[] {
  const byDay = groupedBy(
    ironSchedule(log, facts).irons.filter(({ withdrawn }) => !withdrawn),
    ({ dueOn }) => dueOn,
    ({ iron }) => iron,
  )
  return [...byDay].map(([dueOn, irons]) => ({
    log: log.code,
    subject: `${irons.length === 1 ? 'Iron' : 'Irons'} ${irons.join(', ')}: ${what}`,
    dueOn,
  }))
}

function analysisDue(log: Log, { requirements }: Facts): CheckDue[] {
  const newest = cellAt(log, 'at', log.readings.count - 1)
  if (!Number.isFinite(newest)) return []
  const { value: days } = governingRequirement(bathAnalysisInterval, requirements)
  return [
    { log: log.code, subject: `Bath analysis, log ${log.code}`, dueOn: addDays(dayOf(log, newest), days) },
  ]
}
