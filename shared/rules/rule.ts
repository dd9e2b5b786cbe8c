import type { Limit, GoverningRequirement } from '@/shared/plan/requirement'
import { governingRequirement } from '@/shared/plan/requirement'
import type { Parameter } from '@/shared/plan/parameter'
import type { Stage } from '@/shared/plan/stage'
import type { Facts } from './facts'
import type { Finding, Judged } from './finding'
import type { RecordSource } from './record-source'
import { memo } from '@/shared/memo'

/** Today's date as an input, 'YYYY-MM-DD': rules never ask a clock. */
export interface TodaySource {
  readonly source: 'today'
  readonly key: 'today'
  readonly label: string
}
export const today: TodaySource = { source: 'today', key: 'today', label: 'the date of judging' }

export type Readable = Parameter | Limit | RecordSource<unknown> | TodaySource
/** A read the rule can do without: it gets undefined when nothing is there. */
export interface OptionalRead<R extends Readable> {
  readonly source: 'optional'
  readonly of: R
}
export const optional = <R extends Readable>(of: R): OptionalRead<R> => ({ source: 'optional', of })

export type Reads = Record<string, Readable | OptionalRead<Readable>>

type InputOf<R> =
  R extends OptionalRead<infer Inner>
    ? InputOf<Inner> | undefined
    : R extends Limit
      ? GoverningRequirement
      : R extends TodaySource
        ? string
        : R extends RecordSource<infer T>
          ? T
          : R extends Parameter<infer T>
            ? T
            : never
export type Inputs<R extends Reads> = { readonly [K in keyof R]: InputOf<R[K]> }

/** A pure function from specification and records to a finding, with its reads declared. */
export interface Rule<R extends Reads = Reads> {
  readonly id: string
  readonly title: string
  /** What the rule protects against, in one or two sentences for a newcomer. */
  readonly why: string
  /** What is compared with what: the formula, or the comparison in words. Listed in docs/rules.md. */
  readonly formula: string
  readonly stage: Stage
  /** Raised whenever the rule's outcome can change for the same inputs. */
  readonly version: number
  readonly reads: R
  readonly judge: (inputs: Inputs<R>) => Judged
}

/** A rule whose reads are no longer typed, as the registry holds it. */
export type AnyRule = Omit<Rule, 'judge'> & { readonly judge: (inputs: never) => Judged }

/** Declares a rule; the types of `judge`'s inputs follow from `reads`. */
export const rule = <const R extends Reads>(definition: Rule<R>): Rule<R> => definition

export const readableOf = (read: Readable | OptionalRead<Readable>): Readable =>
  read.source === 'optional' ? read.of : read

/** What a read yields today; undefined when the specification does not hold it yet. */
export function take(read: Readable, facts: Facts): unknown {
  switch (read.source) {
    case 'parameter':
      return facts.values.get(read.key)
    case 'limit':
      return governingFrom(facts.requirements, read)
    case 'records':
      return read.from(facts.records)
    case 'today':
      return facts.today
  }
}

/** Judges one rule. Missing required inputs make it undetermined and are named. */
export function judge(subject: AnyRule, facts: Facts): Finding {
  const inputs: Record<string, unknown> = {}
  const missing: string[] = []
  const lacking: string[] = []
  for (const [name, read] of Object.entries(subject.reads)) {
    const readable = readableOf(read)
    const value = take(readable, facts)
    if (value === undefined && read.source !== 'optional') missing.push(readable.label)
    if (isNothing(value)) lacking.push(readable.key)
    inputs[name] = value
  }
  const judged = missing.length > 0 ? notYet(missing) : subject.judge(inputs as never)
  const found = { rule: subject.id, version: subject.version, ...judged }
  return judged.verdict === 'undetermined' ? { ...found, missing: missingFrom(judged), lacking } : found
}

const isNothing = (value: unknown): boolean =>
  value === undefined ||
  (Array.isArray(value) && value.length === 0) ||
  (value instanceof Map && value.size === 0)

/** What a rule says is missing; else what its undetermined parts are about, or all that it says. */
function missingFrom({ missing = [], parts = [], found }: Judged): readonly string[] {
  if (missing.length > 0) return missing
  const open = parts.filter(({ verdict }) => verdict === 'undetermined')
  return open.length > 0 ? open.map((part) => `${part.subject}: ${part.found}`) : [found]
}

const notYet = (missing: readonly string[]): Judged => ({
  verdict: 'undetermined',
  found: `Cannot be judged without: ${missing.join('; ')}.`,
  limit: 'Cannot be judged yet.',
  missing,
  working: [],
  sources: [],
})

/** Governing requirements are remembered per facts, so that unchanged limits stay the same object. */
const governingFrom = memo(
  (requirements: Facts['requirements'], limit: Limit): GoverningRequirement =>
    governingRequirement(limit, requirements),
  500,
)
