import { findLimit, findParameter, findRule } from '@/shared/catalogue/standard-plan'
import { sameValue } from '@/shared/plan/same-value'
import { formatQuantity } from '@/shared/quantity/format'
import type { Finding } from '@/shared/rules/finding'
import { readableOf } from '@/shared/rules/rule'
import { foundNow, readFound, type FoundPart, type FoundThen } from './found-then'
import { hasFirstForm } from './first-form-content'
import type { ItemState } from './item-status'
import type { ApprovalEntry } from './programme-state'
import type { SignedContentShape } from './signed-content-difference'

/**
 * Why a lapsed approval cannot be confirmed but has to be given again, in a
 * sentence; undefined when what stands is substantively what was approved:
 * the item asks the same of the same departments on the same evidence, the same
 * layers govern with the same limits, every finding has its verdict by the same
 * version of its rule, no margin is worse, and each value that changed is judged
 * by a rule of the item, so that the findings do tell of it.
 */
export function confirmationRefusal(
  approval: ApprovalEntry,
  itemState: ItemState,
  findings: ReadonlyMap<string, Finding>,
): string | undefined {
  if (!approval.found || hasFirstForm(approval.signedContent))
    return 'It was signed before margins were kept beside approvals.'
  const before = JSON.parse(approval.signedContent) as SignedContentShape
  const now = JSON.parse(itemState.signedContent) as SignedContentShape
  return (
    itemDiffers(before, now) ??
    limitDiffers(before, now) ??
    verdictDiffers(before, now) ??
    marginWorse(readFound(approval.found), itemState, findings) ??
    valueUnjudged(before, now, itemState, findings)
  )
}

/** The approval of a department that its signatory may confirm; undefined where there is none, or it must be given again. */
export function confirmableBy(
  personId: string,
  department: string,
  itemState: ItemState,
  findings: ReadonlyMap<string, Finding>,
): ApprovalEntry | undefined {
  const own = itemState.approvals.find((entry) => entry.department === department)
  if (!own?.approval || own.holds || own.approval.personId !== personId) return undefined
  return confirmationRefusal(own.approval, itemState, findings) === undefined ? own.approval : undefined
}

function itemDiffers(before: SignedContentShape, now: SignedContentShape): string | undefined {
  if (!sameValue(before.asks, now.asks)) return 'The item asks something else.'
  if (!sameValue(before.approvers, now.approvers)) return 'Other departments are asked to approve it.'
  if (!sameValue(before.setAside ?? null, now.setAside ?? null))
    return 'It became not applicable, or was brought back.'
  return sameValue(before.evidence, now.evidence) ? undefined : 'Its evidence is not the same.'
}

function limitDiffers(before: SignedContentShape, now: SignedContentShape): string | undefined {
  const keys = [...new Set([...Object.keys(before.limits), ...Object.keys(now.limits)])]
  const other = keys.find((key) => !sameValue(before.limits[key] ?? null, now.limits[key] ?? null))
  return other === undefined
    ? undefined
    : `The limit ${findLimit(other)?.label ?? other}, or who states it, is another.`
}

function verdictDiffers(before: SignedContentShape, now: SignedContentShape): string | undefined {
  if (before.findings.length !== now.findings.length) return 'Other rules judge it.'
  const other = now.findings.find(
    (finding) =>
      !before.findings.some(
        ({ rule, version, verdict, concession }) =>
          rule === finding.rule &&
          version === finding.version &&
          verdict === finding.verdict &&
          concession === finding.concession,
      ),
  )
  return other && `${ruleTitle(other.rule)}: its verdict, its rule or its concession is another.`
}

function marginWorse(
  before: readonly FoundThen[],
  { item }: ItemState,
  findings: ReadonlyMap<string, Finding>,
): string | undefined {
  for (const { id } of item.definition.rules) {
    const finding = findings.get(id)
    const was = before.find(({ rule }) => rule === id)
    if (!finding && !was) continue
    const worse = !finding || !was ? 'is not judged as it was' : worseThan(was, foundNow(finding))
    if (worse) return `${ruleTitle(id)} ${worse}.`
  }
  return undefined
}

function worseThan(was: FoundThen, is: FoundThen): string | undefined {
  if (was.data === is.data) return undefined
  if (was.parts.length !== is.parts.length) return 'judges more or fewer things'
  if (is.parts.length === 0) return lessMargin(was, is)
  for (const part of is.parts) {
    const before = was.parts.find(({ about }) => about === part.about)
    if (!before) return 'judges other things'
    if (before.verdict !== part.verdict) return 'has another verdict on one of its parts'
    const less = before.data === part.data ? undefined : lessMargin(before, part)
    if (less) return less
  }
  return undefined
}

function lessMargin(was: Pick<FoundPart, 'margin'>, is: Pick<FoundPart, 'margin'>): string | undefined {
  if (!was.margin || !is.margin) return 'found something else, and has no margin to compare'
  const { unit, direction, limit } = is.margin
  if (was.margin.unit !== unit || was.margin.direction !== direction || was.margin.limit !== limit)
    return 'is held against another limit'
  const [before, now] = [roomIn(was.margin), roomIn(is.margin)]
  return now >= before - rounding(limit)
    ? undefined
    : `has less margin: ${formatQuantity(before, unit, 3)} → ${formatQuantity(now, unit, 3)}`
}

/** How far inside its limit a value lies, in the limit's unit; negative outside. */
const roomIn = ({ found, limit, direction }: NonNullable<FoundThen['margin']>): number =>
  direction === 'at most' ? limit - found : found - limit

/** Half a step of a limit's third figure, which is as far as sheets show it. */
const rounding = (limit: number): number =>
  limit === 0 ? 0 : 10 ** (Math.floor(Math.log10(Math.abs(limit))) - 2) / 2

function valueUnjudged(
  before: SignedContentShape,
  now: SignedContentShape,
  { item }: ItemState,
  findings: ReadonlyMap<string, Finding>,
): string | undefined {
  const judged = new Set(
    item.definition.rules
      .filter(({ id }) => findings.get(id)?.verdict !== 'not applicable')
      .flatMap(({ reads }) => Object.values(reads).map((read) => readableOf(read).key)),
  )
  const changed = Object.keys(now.values).filter(
    (key) => !sameValue(before.values[key] ?? null, now.values[key] ?? null),
  )
  const unjudged = changed.find((key) => !judged.has(key))
  return unjudged === undefined
    ? undefined
    : `No finding of the item tells of ${findParameter(unjudged)?.label ?? unjudged}, which changed.`
}

const ruleTitle = (id: string): string => findRule(id)?.title ?? id
