import { rulesReading } from '@/shared/catalogue/standard-plan'
import type { Parameter } from '@/shared/plan/parameter'
import type { Requirement } from '@/shared/plan/requirement'
import { NO_RECORDS } from '@/shared/records/programme-records'
import type { Facts } from '@/shared/rules/facts'
import type { Finding } from '@/shared/rules/finding'
import { judgeSafely } from '@/shared/rules/judge-safely'
import { readableOf, type AnyRule } from '@/shared/rules/rule'
import { turn, type Turn } from './turn'

/** What the browser is given to judge on: the specification, without the records of lots and logs. */
export interface SpecificationFacts {
  readonly values: Readonly<Record<string, unknown>>
  readonly requirements: readonly Requirement[]
  readonly today: string
}

/** What a value as typed would do to the findings that rest on the specification alone. */
export interface LiveTurns {
  readonly turned: readonly Turn[]
  readonly steady: readonly Turn[]
  /** Titles of the findings that read records too; only the server can judge them. */
  readonly unseen: readonly string[]
}

/** A finding as it is, and as it would be. */
export interface LiveFinding {
  readonly title: string
  readonly was: Finding
  readonly is: Finding
}

/** Judges the rules that read a parameter and no records, with its value as it is and as it would be. */
export function liveFindings(
  parameter: Parameter,
  value: unknown,
  facts: SpecificationFacts,
): readonly LiveFinding[] {
  const now = { ...facts, values: new Map(Object.entries(facts.values)), records: NO_RECORDS }
  const then = { ...now, values: new Map(now.values).set(parameter.key, value) }
  return rulesReading(parameter.key)
    .filter((rule) => !readsRecords(rule))
    .map((rule) => ({
      title: rule.title,
      was: judgeSafely(rule, now).finding,
      is: judgeSafely(rule, then).finding,
    }))
}

/** What a value as typed turns, and what it leaves. */
export function liveTurns(parameter: Parameter, value: unknown, facts: SpecificationFacts): LiveTurns {
  return turnsOf(parameter, liveFindings(parameter, value, facts))
}

/** The same of findings that were judged already. */
export function turnsOf({ key }: Parameter, findings: readonly LiveFinding[]): LiveTurns {
  const turns = findings.map(({ title, was, is }) => turn(title, was, is))
  return {
    turned: turns.filter(({ before, after }) => before !== after),
    steady: turns.filter(({ before, after }) => before === after),
    unseen: rulesReading(key)
      .filter(readsRecords)
      .map(({ title }) => title),
  }
}

/** As much of the specification as the rules that read these parameters look at. */
export function specificationFactsFor(parameters: readonly Parameter[], facts: Facts): SpecificationFacts {
  const read = parameters
    .flatMap(({ key }) => rulesReading(key))
    .filter((rule) => !readsRecords(rule))
    .flatMap((rule) => Object.values(rule.reads).map((entry) => readableOf(entry)))
  const keys = new Set(read.map(({ key }) => key))
  return {
    values: Object.fromEntries([...facts.values].filter(([key]) => keys.has(key))),
    requirements: facts.requirements.filter(({ limit }) => keys.has(limit)),
    today: facts.today,
  }
}

const readsRecords = (rule: AnyRule): boolean =>
  Object.values(rule.reads).some((read) => readableOf(read).source === 'records')
