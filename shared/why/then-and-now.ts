import { findLimit, findRule } from '@/shared/catalogue/standard-plan'
import { parameterName, valueInBrief } from '@/shared/commands/named'
import { hasFirstForm } from '@/shared/gate/first-form-content'
import { firstSignedContent, signedContentInFormOf, type ItemState } from '@/shared/gate/item-status'
import type { Judgement } from '@/shared/gate/judgement'
import type { ApprovalEntry, GateSignatureEntry, ProgrammeState } from '@/shared/gate/programme-state'
import {
  documentCovered,
  questionCovered,
  signedContentDifference,
  type SignedContentShape,
} from '@/shared/gate/signed-content-difference'
import { DEPARTMENT_NAMES, type Department } from '@/shared/plan/department'
import { STAGE_NAMES, stageBefore, type Stage } from '@/shared/plan/stage'
import { formatQuantity } from '@/shared/quantity/format'
import type { WhyAbout } from './step'

/** One thing that a signature covered: what it was then, what it is today, and whether that is the same. */
export interface CoveredThing {
  readonly what: string
  readonly then: string
  readonly now: string
  readonly same: boolean
  /** The differences, a line each, where the two short texts do not tell them. */
  readonly how: readonly string[]
  readonly why?: WhyAbout
}

const NOTHING = 'nothing'

/** All that an approval covered, each beside what it is today. */
export function approvalThenAndNow(approval: ApprovalEntry, item: ItemState): CoveredThing[] {
  const today = signedContentInFormOf(approval.signedContent, item)
  const changes = signedContentDifference(approval.signedContent, today)
  const [then, now] = [
    JSON.parse(approval.signedContent) as SignedContentShape,
    JSON.parse(today) as SignedContentShape,
  ]
  const thing = (
    kind: (typeof changes)[number]['kind'],
    target: string,
    about: Pick<CoveredThing, 'what' | 'then' | 'now'> & Partial<CoveredThing>,
  ): CoveredThing => {
    const change = changes.find((entry) => entry.kind === kind && entry.target === target)
    return { same: change === undefined, how: change?.how ?? [], ...about }
  }
  return [
    thing('item', now.item, {
      what: 'What the item asks',
      then: questionCovered(then),
      now: questionCovered(now),
    }),
    thing('item', now.item, { what: 'Who approves it', then: approversIn(then), now: approversIn(now) }),
    ...keysOf(then.values, now.values).map((key) =>
      thing('value', key, {
        what: parameterName(key),
        then: valueCovered(key, then.values[key]),
        now: valueCovered(key, now.values[key]),
        why: { kind: 'value', key },
      }),
    ),
    ...keysOf(then.parts ?? {}, now.parts ?? {}).map((part) =>
      thing('part', part, {
        what: `Part ${part}`,
        then: valuesCovered(then.parts?.[part]),
        now: valuesCovered(now.parts?.[part]),
      }),
    ),
    ...keysOf(then.limits, now.limits).map((key) =>
      thing('limit', key, {
        what: `Limit: ${findLimit(key)?.label ?? key}`,
        then: limitCovered(key, then.limits[key]),
        now: limitCovered(key, now.limits[key]),
        why: { kind: 'limit', key },
      }),
    ),
    thing('evidence', 'evidence', { what: 'Evidence', then: evidenceIn(then), now: evidenceIn(now) }),
    ...rulesIn(then, now).map((rule) =>
      thing('finding', rule, {
        what: `Finding: ${findRule(rule)?.title ?? rule}`,
        then: findingCovered(then, rule),
        now: findingCovered(now, rule),
        why: { kind: 'finding', key: rule },
      }),
    ),
  ]
}

const keysOf = (then: object, now: object): string[] => [
  ...new Set([...Object.keys(then), ...Object.keys(now)]),
]

const approversIn = ({ approvers }: SignedContentShape): string =>
  approvers.map((department) => DEPARTMENT_NAMES[department as Department]).join(', ')

const valueCovered = (key: string, value: unknown): string =>
  value === undefined || value === null ? 'not specified' : valueInBrief(key, value)

function limitCovered(key: string, covered: SignedContentShape['limits'][string] | undefined): string {
  if (!covered) return NOTHING
  const limit = findLimit(key)
  const value = limit ? `${limit.direction} ${formatQuantity(covered.value, limit.unit, 6)}` : covered.value
  return `${value}, ${documentCovered(key, covered)} (${covered.authority})`
}

const evidenceIn = ({ evidence }: SignedContentShape): string =>
  evidence
    .map(({ kind, sha256, url }) => `${kind}: ${sha256 ? `SHA-256 ${sha256.slice(0, 12)}` : url}`)
    .join('; ') || NOTHING

const rulesIn = (then: SignedContentShape, now: SignedContentShape): string[] => [
  ...new Set([...then.findings, ...now.findings].map(({ rule }) => rule)),
]

function findingCovered({ findings }: SignedContentShape, rule: string): string {
  const found = findings.find((entry) => entry.rule === rule)
  if (!found) return 'not judged'
  const passing = found.concession === null ? '' : `, with concession ${found.concession}`
  return `${found.verdict}, by version ${found.version}${passing}`
}

interface GateCover {
  readonly stage: Stage
  readonly before: string | null
  readonly items: readonly { readonly item: string; readonly setAside: boolean; readonly digest: string }[]
}

/** All that a gate's signature covered: the items of its stage and the gate before, each by its digest. */
export function gateThenAndNow(
  { stage, signedContent }: GateSignatureEntry,
  state: ProgrammeState,
  { items, gates, findings }: Judgement,
): CoveredThing[] {
  const then = JSON.parse(signedContent) as GateCover
  const first = hasFirstForm(signedContent)
  const digestOf = (itemState: ItemState): string | undefined =>
    first
      ? (itemState.first ?? firstSignedContent(itemState.item, state, findings))?.digest
      : itemState.digest
  const own = items.filter(({ item }) => item.definition.stage === stage)
  const keys = [
    ...new Set([...then.items.map(({ item }) => item), ...own.map(({ item }) => item.definition.key)]),
  ]
  const covered = keys.map((key) => {
    const was = then.items.find(({ item }) => item === key)
    const is = own.find(({ item }) => item.definition.key === key)
    const digest = is && digestOf(is)
    const approval = state.approvals.findLast(
      (entry) => entry.itemKey === key && entry.digest === was?.digest,
    )
    return {
      what: is?.item.definition.title ?? key,
      then: was ? coveredItem(was.setAside, was.digest) : 'not in the plan',
      now: is ? coveredItem(is.status === 'not applicable', digest ?? '') : 'not in the plan',
      same: was?.digest === digest && was?.setAside === (is?.status === 'not applicable'),
      how: [],
      ...(approval && { why: { kind: 'approval', key: approval.id } as const }),
    }
  })
  const earlier = stageBefore(stage)
  const before = gates.find((gate) => gate.stage === earlier)
  // In the first form the digest of a gate is another; whether it holds then follows from its items alone.
  if (!earlier || !before || first) return covered
  return [
    {
      what: `${STAGE_NAMES[earlier]} gate`,
      then: shortDigest(then.before ?? ''),
      now: shortDigest(before.digest),
      same: then.before === before.digest,
      how: [],
    },
    ...covered,
  ]
}

const shortDigest = (digest: string): string => digest.slice(0, 12) || 'none'

const coveredItem = (setAside: boolean, digest: string): string =>
  `${setAside ? 'not applicable, ' : ''}${shortDigest(digest)}`

const valuesCovered = (digest: string | undefined): string =>
  digest === undefined ? NOTHING : `values with digest ${digest.slice(0, 12)}`
