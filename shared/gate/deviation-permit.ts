import { limitsRead } from '@/shared/rules/limits-read'
import { governingRequirement, isStricter, type Requirement } from '@/shared/plan/requirement'
import type { Facts } from '@/shared/rules/facts'
import { PASSES, type Finding, type Part, type Verdict } from '@/shared/rules/finding'
import { judgeSafely } from '@/shared/rules/judge-safely'
import type { AnyRule } from '@/shared/rules/rule'
import type { ProgrammeRecords } from '@/shared/records/programme-records'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/*
 * A deviation permit is asked for before anything departs: how far one finding
 * may depart is its bounds. Whether a finding that then comes lies within them
 * is worked out anew each time.
 */

/** How a finding of one rule may depart. */
export type DepartureBounds = LimitDeparture | PartsDeparture

/** From one limit, as far as a value that is looser than the limit. */
export interface LimitDeparture {
  readonly kind: 'limit'
  readonly limit: string
  /** In the limit's unit. */
  readonly value: number
}

/** In one way, for things by their names; of none named, whatever the rule looks at. */
export interface PartsDeparture {
  readonly kind: 'parts'
  readonly way: DepartureWay
  readonly parts: readonly string[]
}

export const DEPARTURE_WAYS = ['fails', 'undetermined'] as const satisfies readonly Verdict[]
export type DepartureWay = (typeof DEPARTURE_WAYS)[number]

/** Whether a finding of the rule departs within the bounds, and in no other way. */
export function isWithin(bounds: DepartureBounds, finding: Finding, rule: AnyRule, facts: Facts): boolean {
  return bounds.kind === 'limit'
    ? PASSES[judgedAsPermitted(bounds, rule, facts)]
    : finding.verdict === bounds.way && partsInTheWay(finding).every((part) => isPermitted(bounds, part))
}

/** What the rule would find if its limit were where the permit lets it depart to. */
function judgedAsPermitted({ limit: key, value }: LimitDeparture, rule: AnyRule, facts: Facts): Verdict {
  const limit = limitsRead(rule).find((entry) => entry.key === key)
  if (!limit || !isStricter(limit, governingRequirement(limit, facts.requirements).value, value))
    return 'fails'
  const permitted: Requirement = {
    id: 'permit',
    limit: key,
    authority: 'customer',
    document: '',
    clause: '',
    value,
    relaxes: true,
    reason: '',
    lesson: null,
  }
  const requirements = [...facts.requirements.filter((entry) => entry.limit !== key), permitted]
  return judgeSafely(rule, { ...facts, requirements }).finding.verdict
}

const partsInTheWay = ({ parts = [] }: Finding): Part[] => parts.filter(({ verdict }) => !PASSES[verdict])

/** A part of another verdict than the permitted one is in the way whatever its name. */
function isPermitted({ way, parts }: PartsDeparture, { verdict, subject, about }: Part): boolean {
  const names = [subject, ...Object.values(about ?? {})].map(nameKey)
  return verdict === way && (parts.length === 0 || parts.some((part) => names.includes(nameKey(part))))
}

/** A name as it is compared: spaces and capitals do not tell two apart. */
const nameKey = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase()

/** Boards soldered on that day or later, by the soldering runs on record. 'YYYY-MM-DD'. */
export const boardsSolderedSince = (records: ProgrammeRecords, day: string): number =>
  recordsOfKind(records, 'soldering-run')
    .filter(({ doneOn }) => doneOn >= day)
    .reduce((sum, { assemblies }) => sum + assemblies, 0)
