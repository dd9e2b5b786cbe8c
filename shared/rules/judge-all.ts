import type { Facts } from './facts'
import type { Finding } from './finding'
import { judge, readableOf, take, type AnyRule } from './rule'

/** The findings of a set of rules, with what each was judged on. */
export interface Judging {
  readonly findings: ReadonlyMap<string, Finding>
  readonly inputs: ReadonlyMap<string, readonly unknown[]>
}

/**
 * Judges the rules on these facts. Given an earlier judging, only the rules
 * whose declared inputs changed (by identity) are judged again.
 */
export function judgeAll(rules: readonly AnyRule[], facts: Facts, before?: Judging): Judging {
  const findings = new Map<string, Finding>()
  const inputs = new Map<string, readonly unknown[]>()
  for (const rule of rules) {
    const now = inputsOf(rule, facts)
    const known = before?.findings.get(rule.id)
    const unchanged = known?.version === rule.version && sameInputs(before?.inputs.get(rule.id), now)
    findings.set(rule.id, unchanged && known ? known : judge(rule, facts))
    inputs.set(rule.id, now)
  }
  return { findings, inputs }
}

const inputsOf = (rule: AnyRule, facts: Facts): readonly unknown[] =>
  Object.values(rule.reads).map((read) => take(readableOf(read), facts))

/** The same objects and values, one by one. */
export const sameInputs = (before: readonly unknown[] | undefined, now: readonly unknown[]): boolean =>
  before !== undefined &&
  before.length === now.length &&
  before.every((input, index) => Object.is(input, now[index]))
