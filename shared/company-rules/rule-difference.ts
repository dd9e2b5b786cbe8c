import type { CompanyRule } from './company-rule'

/** What of a rule a programme may not follow: that it was stated, or that it was withdrawn. */
export const RULE_STANDINGS = ['stated', 'withdrawn'] as const
export type RuleStanding = (typeof RULE_STANDINGS)[number]

/** A requirement that stands in a programme and was taken over from a company rule. */
export interface RuleTaken {
  readonly requirement: string
  readonly rule: string
}

/** A programme's decision to keep what it has. */
export interface OwnKept {
  readonly rule: string
  readonly standing: RuleStanding
  readonly reason: string
  readonly by: string
  readonly at: string
}

/** One way in which a programme departs from the company rules of today. */
export interface RuleDifference<Rule = CompanyRule, Kept = OwnKept> {
  /** 'stated': the works ask for the rule, and the programme has not laid it. 'withdrawn': it has laid what the works ask no more. */
  readonly standing: RuleStanding
  readonly rule: Rule
  /** Requirements that go when it is taken over: laid by rules whose place it took, or by the withdrawn rule itself. */
  readonly goes: readonly RuleTaken[]
  /** The programme keeps its own, and why; null while it has not decided. */
  readonly kept: Kept | null
}

type Chained = Pick<CompanyRule, 'id' | 'replaces'> & { readonly withdrawn: object | null }

/**
 * What the works state today, against what a programme took over: rules in force that it has not laid, and requirements
 * of rules that were withdrawn. A withdrawn rule whose place another took is part of that one's difference.
 */
export function ruleDifferences<Rule extends Chained, Kept extends Pick<OwnKept, 'rule' | 'standing'>>(
  rules: readonly Rule[],
  taken: readonly RuleTaken[],
  kept: readonly Kept[],
): RuleDifference<Rule, Kept>[] {
  const keptOf = (rule: string, standing: RuleStanding): Kept | null =>
    kept.findLast((own) => own.rule === rule && own.standing === standing) ?? null
  const missing = rules.filter(
    ({ id, withdrawn }) => withdrawn === null && !taken.some(({ rule }) => rule === id),
  )
  const stated = missing.map((rule): RuleDifference<Rule, Kept> => {
    const before = replacedBy(rule, rules)
    return {
      standing: 'stated',
      rule,
      goes: taken.filter((own) => before.has(own.rule)),
      kept: keptOf(rule.id, 'stated'),
    }
  })
  const told = new Set(stated.flatMap(({ goes }) => goes.map(({ requirement }) => requirement)))
  const withdrawn = rules.flatMap((rule): RuleDifference<Rule, Kept>[] => {
    if (rule.withdrawn === null) return []
    const goes = taken.filter((own) => own.rule === rule.id && !told.has(own.requirement))
    return goes.length > 0 ? [{ standing: 'withdrawn', rule, goes, kept: keptOf(rule.id, 'withdrawn') }] : []
  })
  return [...stated, ...withdrawn]
}

/** The ids of all rules whose place this one took, one after another. */
export function replacedBy(
  { replaces }: Pick<Chained, 'replaces'>,
  rules: readonly Chained[],
): ReadonlySet<string> {
  const before = new Set<string>()
  for (let next = replaces; next !== null && !before.has(next);) {
    before.add(next)
    next = rules.find(({ id }) => id === next)?.replaces ?? null
  }
  return before
}

/** Those that the programme has not decided on. */
export const undecided = <Difference extends { readonly kept: object | null }>(
  differences: readonly Difference[],
): Difference[] => differences.filter(({ kept }) => kept === null)
