import { findLimit, findParameter, findRule, findItem } from '@/shared/catalogue/standard-plan'
import { valueDifference } from '@/shared/plan/value-difference'
import { formatQuantity } from '@/shared/quantity/format'
import { sameValue } from '@/shared/plan/same-value'
import type { CoveredLimit, CoveredQuestion } from './signed-content'

/** What an approval's cover holds, in the form written now or in the first. */
export interface SignedContentShape {
  readonly item: string
  readonly asks: CoveredQuestion | FirstQuestion
  readonly approvers: readonly string[]
  readonly setAside: { readonly reason: string; readonly agreed: boolean } | null
  readonly values: Readonly<Record<string, unknown>>
  /** Of the parts of the works that its rules look at: the digest of each one's values. */
  readonly parts?: Readonly<Record<string, string>>
  readonly limits: Readonly<Record<string, CoveredLimit | FirstLimit>>
  readonly evidence: readonly {
    readonly kind: string
    readonly sha256: string | null
    readonly url: string | null
  }[]
  readonly findings: readonly {
    readonly rule: string
    readonly version: number
    readonly verdict: string
    readonly concession: number | null
  }[]
}

/** The words themselves, whoever wrote them. */
type FirstQuestion = string
type FirstLimit = { readonly value: number; readonly authority: string; readonly document: string }

/** The document that a covered limit names; for a default, its source as it reads today. */
export const documentCovered = (key: string, limit: SignedContentShape['limits'][string]): string =>
  'document' in limit ? limit.document : (findLimit(key)?.byDefault.from.cite ?? 'the default')

/** What a covered item asks, as it reads: a standard one in today's words. */
export const questionCovered = ({ item, asks }: Pick<SignedContentShape, 'item' | 'asks'>): string => {
  if (typeof asks === 'string') return asks
  return 'text' in asks ? asks.text : (findItem(item)?.asks ?? item)
}

/** One thing that changed between a cover as signed and as it stands, and how. */
export interface SignedContentChange {
  readonly kind: 'value' | 'part' | 'limit' | 'evidence' | 'finding' | 'item'
  /** Key of the parameter or limit, id of the rule; what the change is about. */
  readonly target: string
  readonly what: string
  /** A line a difference, such as “245 °C → 250 °C”. */
  readonly how: readonly string[]
}

/** What differs between a cover as signed and as it stands today, both in one form; empty when nothing does. */
export function signedContentDifference(signed: string, today: string): SignedContentChange[] {
  if (signed === today) return []
  const [before, now] = [JSON.parse(signed) as SignedContentShape, JSON.parse(today) as SignedContentShape]
  return [
    ...valueChanges(before, now),
    ...partChanges(before, now),
    ...limitChanges(before, now),
    ...evidenceChanges(before, now),
    ...findingChanges(before, now),
    ...itemChanges(before, now),
  ]
}

const valueChanges = (before: SignedContentShape, now: SignedContentShape): SignedContentChange[] =>
  changedKeys(before.values, now.values).map((key) => {
    const parameter = findParameter(key)
    return {
      kind: 'value',
      target: key,
      what: parameter?.label ?? key,
      how: parameter ? valueDifference(parameter, before.values[key], now.values[key]) : [],
    }
  })

const partChanges = (before: SignedContentShape, now: SignedContentShape): SignedContentChange[] =>
  changedKeys(before.parts ?? {}, now.parts ?? {}).map((part) => ({
    kind: 'part',
    target: part,
    what: `part ${part}`,
    how: [partChange(before.parts?.[part], now.parts?.[part])],
  }))

function partChange(before: string | undefined, now: string | undefined): string {
  if (before === undefined) return 'listed or described since'
  return now === undefined ? 'not listed any more' : 'has other values now'
}

const limitChanges = (before: SignedContentShape, now: SignedContentShape): SignedContentChange[] =>
  changedKeys(before.limits, now.limits).map((key) => {
    const limit = findLimit(key)
    const said = (entry: SignedContentShape['limits'][string] | undefined) =>
      entry
        ? `${limit ? formatQuantity(entry.value, limit.unit, 6) : entry.value} by ${documentCovered(key, entry)} (${entry.authority})`
        : 'none'
    return {
      kind: 'limit',
      target: key,
      what: `the limit ${limit?.label ?? key}`,
      how: [`${said(before.limits[key])} → ${said(now.limits[key])}`],
    }
  })

function evidenceChanges(before: SignedContentShape, now: SignedContentShape): SignedContentChange[] {
  const name = ({ kind, sha256, url }: SignedContentShape['evidence'][number]) =>
    `${kind} (${sha256 ? sha256.slice(0, 12) : url})`
  const without = (some: SignedContentShape['evidence'], others: SignedContentShape['evidence']) =>
    some.map(name).filter((entry) => !others.map(name).includes(entry))
  const how = [
    ...without(now.evidence, before.evidence).map((entry) => `attached: ${entry}`),
    ...without(before.evidence, now.evidence).map((entry) => `withdrawn: ${entry}`),
  ]
  if (same(before.evidence, now.evidence)) return []
  return [{ kind: 'evidence', target: 'evidence', what: 'the evidence', how }]
}

const findingChanges = (before: SignedContentShape, now: SignedContentShape): SignedContentChange[] => [
  ...now.findings.flatMap((finding) => {
    const how = findingDifference(
      before.findings.find(({ rule }) => rule === finding.rule),
      finding,
    )
    return how ? findingChange(finding.rule, how) : []
  }),
  ...before.findings
    .filter(({ rule }) => !now.findings.some((finding) => finding.rule === rule))
    .map(({ rule }) => findingChange(rule, 'is not judged any more')),
]

const findingChange = (rule: string, how: string): SignedContentChange => ({
  kind: 'finding',
  target: rule,
  what: `the finding “${findRule(rule)?.title ?? rule}”`,
  how: [how],
})

function findingDifference(
  before: SignedContentShape['findings'][number] | undefined,
  now: SignedContentShape['findings'][number],
): string | undefined {
  if (!before) return `was not judged then; ${now.verdict} now`
  if (before.verdict !== now.verdict) return `${before.verdict} → ${now.verdict}`
  if (before.version !== now.version)
    return `by version ${now.version} of the rule, before by ${before.version}`
  if (before.concession !== now.concession)
    return now.concession === null
      ? `concession ${before.concession} no longer lets it pass`
      : `concession ${now.concession} lets it pass`
  return undefined
}

function itemChanges(before: SignedContentShape, now: SignedContentShape): SignedContentChange[] {
  const how = [
    ...(same(before.asks, now.asks) ? [] : [questionChange(before, now)]),
    ...(same(before.approvers, now.approvers)
      ? []
      : [`approvers: ${before.approvers.join(', ')} → ${now.approvers.join(', ')}`]),
    ...(same(before.setAside, now.setAside) ? [] : ['it became not applicable, or was brought back']),
  ]
  return how.length > 0 ? [{ kind: 'item', target: now.item, what: 'the item itself', how }] : []
}

function questionChange(before: SignedContentShape, now: SignedContentShape): string {
  const [was, is] = [questionCovered(before), questionCovered(now)]
  return was === is ? `asks something else than then: “${is}”` : `asks: “${was}” → “${is}”`
}

const changedKeys = (
  before: Readonly<Record<string, unknown>>,
  now: Readonly<Record<string, unknown>>,
): string[] =>
  [...new Set([...Object.keys(before), ...Object.keys(now)])].filter((key) => !same(before[key], now[key]))

const same = (a: unknown, b: unknown): boolean => sameValue(a ?? null, b ?? null)
