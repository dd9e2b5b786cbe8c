import type { Department } from '@/shared/plan/department'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { findRule } from '@/shared/catalogue/standard-plan'
import { PASSES, type Finding } from '@/shared/rules/finding'
import { sameInputs } from '@/shared/rules/judge-all'
import { isClosed, waitsFor } from './action-status'
import { CONCESSION_STANDINGS, concessionFor, concessionName, concessionStatus } from './concession'
import { basisOf, signedContentOf, digestOf, emptyParameters } from './signed-content'
import { concernedInWords } from './concerned'
import { firstSignedContentOf, hasFirstForm } from './first-form-content'
import type { ApprovalEntry, PlannedItem, ProgrammeState } from './programme-state'

export const STATUSES = ['open', 'incomplete', 'ready', 'approved', 'lapsed', 'not applicable'] as const
export type Status = (typeof STATUSES)[number]

/** One reason why an item is not settled, and where to go about it. */
export interface OpenPoint {
  readonly kind: 'value' | 'finding' | 'evidence' | 'action' | 'concession' | 'not applicable' | 'approval'
  readonly message: string
  /** Key of the parameter, id of the rule, number of the action…: the link's target. */
  readonly target: string
}

/** Whether a department's newest approval still covers the item as it stands. */
export interface ApprovalState {
  readonly department: Department
  readonly approval: ApprovalEntry | null
  readonly holds: boolean
}

export interface ItemState {
  readonly item: PlannedItem
  readonly status: Status
  readonly openPoints: readonly OpenPoint[]
  readonly approvals: readonly ApprovalState[]
  readonly signedContent: string
  readonly digest: string
  /** The same in the first form of covers; made only where an approval in that form asks for it. */
  readonly first: FirstSignedContent | undefined
  /** What the cover was made of, to know whether it must be made again. */
  readonly basis: readonly unknown[]
}

/** Nothing of the item is outstanding: it is approved as it stands, or does not apply. */
export const isSettled = ({ openPoints }: Pick<ItemState, 'openPoints'>): boolean => openPoints.length === 0

/** What an approval in the first form would cover today. */
interface FirstSignedContent {
  readonly signedContent: string
  readonly digest: string
}

/** Derives an item's status from the recorded facts and the findings on them; what it was before saves work. */
export function itemStateOf(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
  before?: ItemState,
): ItemState {
  const covered = coveredBy(item, state, findings, before)
  const approvals = approvalStates(item, state, covered)
  if (item.tailoredOut?.agreed)
    return { item, status: 'not applicable', openPoints: [], approvals, ...covered }

  const substance = shortfallsOf(item, state, findings)
  const unsigned = approvals.filter(({ holds }) => !holds)
  const openPoints = [...substance, ...unsigned.map(missingApproval)]
  return {
    item,
    status: statusFrom(item, state, substance, approvals),
    openPoints,
    approvals,
    ...covered,
  }
}

function coveredBy(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
  before: ItemState | undefined,
): Pick<ItemState, 'signedContent' | 'digest' | 'first' | 'basis'> {
  const basis = basisOf(item, state, findings)
  const unchanged = before && sameInputs(before.basis, basis) ? before : undefined
  const signedContent = unchanged?.signedContent ?? signedContentOf(item, state, findings)
  const digest = signedContent === before?.signedContent ? before.digest : digestOf(signedContent)
  const asked = newestApprovals(item, state).some(
    ({ approval }) => approval && approval.digest !== digest && hasFirstForm(approval.signedContent),
  )
  const first = asked ? (unchanged?.first ?? firstSignedContent(item, state, findings)) : undefined
  return { signedContent, digest, first, basis }
}

/** What approvals in the first form are held against; undefined where they lapse whatever else stands. */
export function firstSignedContent(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
): FirstSignedContent | undefined {
  const signedContent = firstSignedContentOf(item, state, findings)
  return signedContent === undefined ? undefined : { signedContent, digest: digestOf(signedContent) }
}

/** What stands today in the form that a signed cover has, so that the two can be compared. */
export const signedContentInFormOf = (signed: string, { signedContent, first }: ItemState): string =>
  first && hasFirstForm(signed) ? first.signedContent : signedContent

function statusFrom(
  item: PlannedItem,
  state: ProgrammeState,
  substance: readonly OpenPoint[],
  approvals: readonly ApprovalState[],
): Status {
  const lapsed = approvals.some(({ approval, holds }) => approval && !holds)
  if (lapsed) return 'lapsed'
  if (substance.length > 0) return isUntouched(item, state) ? 'open' : 'incomplete'
  return approvals.every(({ holds }) => holds) ? 'approved' : 'ready'
}

/** Nothing specified, attached, asked or signed on the item yet. */
function isUntouched({ definition }: PlannedItem, state: ProgrammeState): boolean {
  const { key, parameters } = definition
  return (
    !parameters.some((parameter) => state.facts.values.has(parameter.key)) &&
    !state.evidence.some((entry) => entry.itemKey === key) &&
    !state.actions.some((action) => action.itemKey === key) &&
    !state.approvals.some((approval) => approval.itemKey === key)
  )
}

const approvalStates = (
  item: PlannedItem,
  state: ProgrammeState,
  { digest, first }: Pick<ItemState, 'digest' | 'first'>,
): ApprovalState[] =>
  newestApprovals(item, state).map((entry) => ({
    ...entry,
    holds: entry.approval !== null && [digest, first?.digest].includes(entry.approval.digest),
  }))

const newestApprovals = (
  { definition }: PlannedItem,
  state: ProgrammeState,
): Omit<ApprovalState, 'holds'>[] =>
  definition.approvers.map((department) => ({
    department,
    approval:
      state.approvals.findLast(
        (entry) => entry.itemKey === definition.key && entry.department === department,
      ) ?? null,
  }))

const missingApproval = ({ department, approval }: ApprovalState): OpenPoint => ({
  kind: 'approval',
  target: department,
  message: approval
    ? `The approval of ${DEPARTMENT_NAMES[department]} (${approval.personName}) lapsed: what it covered has changed.`
    : `Awaiting approval by ${DEPARTMENT_NAMES[department]}.`,
})

/** Everything but signatures that keeps the item from being ready. */
function shortfallsOf(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
): OpenPoint[] {
  const { definition } = item
  return [
    ...(item.tailoredOut
      ? [
          {
            kind: 'not applicable' as const,
            target: definition.key,
            message: 'It is proposed as not applicable; quality has not decided.',
          },
        ]
      : []),
    ...emptyParameters(item, state).map((parameter) => ({
      kind: 'value' as const,
      target: parameter.key,
      message: `Not specified: ${parameter.label}.`,
    })),
    ...definition.rules.flatMap((rule) => findingOpenPoint(definition.key, findings.get(rule.id), state)),
    ...definition.evidence
      .filter(
        ({ kind, required }) =>
          required &&
          !state.evidence.some((entry) => entry.itemKey === definition.key && entry.kind === kind),
      )
      .map(({ kind, label }) => ({
        kind: 'evidence' as const,
        target: kind,
        message: `Evidence is missing: ${label}.`,
      })),
    ...state.actions
      .filter((action) => action.itemKey === definition.key && !isClosed(action))
      .map((action) => ({
        kind: 'action' as const,
        target: String(action.number),
        message:
          waitsFor(action) === 'acceptance'
            ? `Action ${action.number} is answered but not accepted.`
            : `Action ${action.number} to ${DEPARTMENT_NAMES[action.to]} is unanswered.`,
      })),
    ...state.concessions
      .filter(
        (concession) =>
          concession.itemKey === definition.key &&
          CONCESSION_STANDINGS[concessionStatus(concession, findings.get(concession.rule), state.facts)]
            .waits,
      )
      .map((concession) => ({
        kind: 'concession' as const,
        target: String(concession.number),
        message: `${concessionName(concession)} is asked for and not decided.`,
      })),
  ]
}

function findingOpenPoint(itemKey: string, finding: Finding | undefined, state: ProgrammeState): OpenPoint[] {
  if (!finding || PASSES[finding.verdict]) return []
  if (concessionFor(finding, itemKey, state)) return []
  const title = findRule(finding.rule)?.title ?? finding.rule
  const concerned = concernedInWords(finding)
  const message = `${title}: ${finding.found}${concerned && ` Concerned, ${concerned}.`}`
  return [{ kind: 'finding', target: finding.rule, message }]
}
