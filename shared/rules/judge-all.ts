import type { Facts } from './facts'
import type { Finding } from './finding'
import { judgeSafely, type Outcome } from './judge-safely'
import { readableOf, take, type AnyRule } from './rule'

/** The findings of a set of rules, with what each was judged on. */
export interface Judging {
  readonly findings: ReadonlyMap<string, Finding>
  readonly inputs: ReadonlyMap<string, readonly unknown[]>
  /** What each rule threw that could not be computed; its finding is undetermined and says so. */
  readonly failures: ReadonlyMap<string, NonNullable<Outcome['failure']>>
}

/**
 * Judges the rules on these facts. Given an earlier judging, only the rules
 * whose declared inputs changed (by identity) are judged again. A rule that
 * throws is one undetermined finding, and no more.
 */
export function judgeAll(rules: readonly AnyRule[], facts: Facts, before?: Judging): Judging {
  const findings = new Map<string, Finding>()
  const inputs = new Map<string, readonly unknown[]>()
  const failures = new Map<string, NonNullable<Outcome['failure']>>()
  for (const rule of rules) {
    const now = inputsOf(rule, facts)
    const known = before?.findings.get(rule.id)
    const unchanged = known?.version === rule.version && sameInputs(before?.inputs.get(rule.id), now)
    const { finding, failure } =
      unchanged && known
        ? { finding: known, failure: before?.failures.get(rule.id) }
        : judgeSafely(rule, facts)
    findings.set(rule.id, finding)
    inputs.set(rule.id, now)
    if (failure) failures.set(rule.id, failure)
  }
  return { findings, inputs, failures }
}

const inputsOf = (rule: AnyRule, facts: Facts): readonly unknown[] =>
  Object.values(rule.reads).map((read) => take(readableOf(read), facts))

/** The same objects and values, one by one. */
export const sameInputs = (before: readonly unknown[] | undefined, now: readonly unknown[]): boolean =>
  before !== undefined &&
  before.length === now.length &&
  before.every((input, index) => Object.is(input, now[index]))
