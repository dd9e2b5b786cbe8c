import {
  groundCheckInterval,
  TIP_GROUND_BY_EDITION,
  tipAccuracyMax,
  tipCheckInterval,
  tipGroundMax,
} from '@/shared/plan/limits/control-hand'
import { tipAccuracyEdition } from '@/shared/plan/parameters/control-hand'
import type { Parameter } from '@/shared/plan/parameter'
import { governingRequirement, type GoverningRequirement } from '@/shared/plan/requirement'
import { addDays, daysBetween } from '@/shared/quantity/calendar'
import { tipGround } from '@/shared/records/characteristics/tip-ground'
import { cellAt } from '@/shared/logs/log-series'
import type { Log } from '@/shared/records/log'
import { rowsByText } from '@/shared/logs/readings-by-text'
import type { Facts } from '@/shared/rules/facts'
import { governingUnder } from '@/shared/plan/edition-requirement'
import type { ProcessWindow } from '@/shared/logs/logged-window'
import { boundBy } from '@/shared/logs/logged-window'
import { accuracyRequirement } from './tip-accuracy'
import { dayOf } from '@/shared/logs/log-day'

/** What is checked of an iron, as the check tells it: how far the tip lies off its setting, or its way to ground. */
export interface IronCheck {
  readonly at: number
  readonly found: number
}

/** One iron with its checks, the newest last, and when the next falls due. */
export interface IronDue {
  readonly iron: string
  readonly checks: readonly IronCheck[]
  readonly withdrawn: boolean
  readonly checkedOn: string
  readonly dueOn: string
  /** From today; negative once it is past. */
  readonly daysLeft: number
}

export interface IronSchedule {
  readonly window: ProcessWindow
  readonly everyDays: GoverningRequirement
  /** Due soonest first; those out of use last. */
  readonly irons: readonly IronDue[]
}

/** The irons of a log of tip temperatures or of ground checks, with when each is due again. */
export function ironSchedule(log: Log, facts: Facts): IronSchedule {
  const ground = log.characteristic === tipGround.key
  const { requirements } = facts
  const everyDays = governingRequirement(ground ? groundCheckInterval : tipCheckInterval, requirements)
  const found = (row: number): number =>
    ground
      ? cellAt(log, 'resistanceOhm', row)
      : Number((cellAt(log, 'measuredC', row) - cellAt(log, 'setC', row)).toPrecision(6))
  const irons = [...rowsByText(log, 'iron')].flatMap(([iron, rows]): IronDue[] => {
    const checks = rows
      .map((row) => ({ at: cellAt(log, 'at', row), found: found(row) }))
      .filter(({ at, found: value }) => Number.isFinite(at) && Number.isFinite(value))
    const newest = checks[checks.length - 1]
    if (!newest) return []
    const checkedOn = dayOf(log, newest.at)
    const dueOn = addDays(checkedOn, everyDays.value)
    const withdrawn = log.readings.columns['state']?.[rows[rows.length - 1]!] === 'withdrawn'
    return [{ iron, checks, withdrawn, checkedOn, dueOn, daysLeft: daysBetween(facts.today, dueOn) }]
  })
  return {
    window: ground ? groundWindow(facts) : tipWindow(facts),
    everyDays,
    irons: irons.sort(
      (one, other) => Number(one.withdrawn) - Number(other.withdrawn) || one.daysLeft - other.daysLeft,
    ),
  }
}

const editionOf = ({ values }: Facts) =>
  values.get((tipAccuracyEdition as Parameter).key) as Parameters<typeof accuracyRequirement>[1]

function tipWindow(facts: Facts): ProcessWindow {
  const { value, document } = boundBy(
    accuracyRequirement(governingRequirement(tipAccuracyMax, facts.requirements), editionOf(facts)),
  )
  return { min: { value: -value, document }, max: { value, document }, unit: 'K' }
}

function groundWindow(facts: Facts): ProcessWindow {
  const governing = governingRequirement(tipGroundMax, facts.requirements)
  const edition = editionOf(facts)
  const max =
    edition === undefined || edition === 'strictest'
      ? governing
      : governingUnder(governing, { ...TIP_GROUND_BY_EDITION[edition], authority: 'standard' })
  return { max: boundBy(max), unit: 'Ω' }
}
