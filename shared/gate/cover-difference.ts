import { findLimit, findParameter, findRule } from '@/shared/plan/catalogue'

interface Cover {
  readonly values: Readonly<Record<string, unknown>>
  readonly limits: Readonly<Record<string, unknown>>
  readonly evidence: readonly unknown[]
  readonly findings: readonly {
    readonly rule: string
    readonly version: number
    readonly verdict: string
    readonly concession: number | null
  }[]
}

/** What differs between a cover as signed and as it stands today, in words; empty when nothing does. */
export function coverDifference(signed: string, today: string): string[] {
  if (signed === today) return []
  const [before, now] = [JSON.parse(signed) as Cover, JSON.parse(today) as Cover]
  const differences = [
    ...changedKeys(before.values, now.values).map((key) => findParameter(key)?.label ?? key),
    ...changedKeys(before.limits, now.limits).map((key) => `the limit ${findLimit(key)?.label ?? key}`),
    ...(same(before.evidence, now.evidence) ? [] : ['the evidence']),
    ...now.findings.flatMap((finding) =>
      findingDifference(
        before.findings.find(({ rule }) => rule === finding.rule),
        finding,
      ),
    ),
  ]
  return differences.length > 0 ? differences : ['the item’s own definition']
}

function findingDifference(
  before: Cover['findings'][number] | undefined,
  now: Cover['findings'][number],
): string[] {
  const title = findRule(now.rule)?.title ?? now.rule
  if (!before) return [`the new rule “${title}”`]
  if (before.version !== now.version) return [`the rule “${title}”, now version ${now.version}`]
  if (before.verdict !== now.verdict)
    return [`the finding “${title}”, ${before.verdict} then and ${now.verdict} now`]
  if (before.concession !== now.concession) return [`the concession on “${title}”`]
  return []
}

const changedKeys = (
  before: Readonly<Record<string, unknown>>,
  now: Readonly<Record<string, unknown>>,
): string[] =>
  [...new Set([...Object.keys(before), ...Object.keys(now)])].filter((key) => !same(before[key], now[key]))

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b)
