import type { Department } from '@/shared/plan/department'
import { DEPARTMENT_NAMES } from '@/shared/plan/department'
import { findRule } from '@/shared/catalogue/standard-plan'
import { PASSES, type Finding } from '@/shared/rules/finding'
import { sameInputs } from '@/shared/rules/judge-all'
import { isClosed, waitsFor } from './action-standing'
import { CONCESSION_STANDINGS, concessionFor, concessionStanding } from './concession'
import { basisOf, coverOf, digestOf, emptyParameters } from './cover'
import { firstCoverOf, hasFirstForm } from './first-cover'
import type { ApprovalEntry, PlannedItem, ProgrammeState } from './programme-state'

export const STANDINGS = ['open', 'short', 'ready', 'approved', 'lapsed', 'set aside'] as const
export type Standing = (typeof STANDINGS)[number]

/** One reason why an item is not settled, and where to go about it. */
export interface Shortfall {
  readonly kind: 'value' | 'finding' | 'evidence' | 'action' | 'concession' | 'set aside' | 'approval'
  readonly says: string
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
  readonly standing: Standing
  readonly shortfalls: readonly Shortfall[]
  readonly approvals: readonly ApprovalState[]
  readonly cover: string
  readonly digest: string
  /** The same in the first form of covers; made only where an approval in that form asks for it. */
  readonly first: FirstCover | undefined
  /** What the cover was made of, to know whether it must be made again. */
  readonly basis: readonly unknown[]
}

/** What an approval in the first form would cover today. */
interface FirstCover {
  readonly cover: string
  readonly digest: string
}

/** Derives an item's standing from the recorded facts and the findings on them; what it was before saves work. */
export function itemStateOf(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
  before?: ItemState,
): ItemState {
  const covered = coveredBy(item, state, findings, before)
  const approvals = approvalStates(item, state, covered)
  if (item.setAside?.agreed) return { item, standing: 'set aside', shortfalls: [], approvals, ...covered }

  const substance = shortfallsOf(item, state, findings)
  const unsigned = approvals.filter(({ holds }) => !holds)
  const shortfalls = [...substance, ...unsigned.map(missingApproval)]
  return {
    item,
    standing: standingFrom(item, state, substance, approvals),
    shortfalls,
    approvals,
    ...covered,
  }
}

function coveredBy(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
  before: ItemState | undefined,
): Pick<ItemState, 'cover' | 'digest' | 'first' | 'basis'> {
  const basis = basisOf(item, state, findings)
  const unchanged = before && sameInputs(before.basis, basis) ? before : undefined
  const cover = unchanged?.cover ?? coverOf(item, state, findings)
  const digest = cover === before?.cover ? before.digest : digestOf(cover)
  const asked = newestApprovals(item, state).some(
    ({ approval }) => approval && approval.digest !== digest && hasFirstForm(approval.cover),
  )
  const first = asked ? (unchanged?.first ?? firstCover(item, state, findings)) : undefined
  return { cover, digest, first, basis }
}

/** What approvals in the first form are held against; undefined where they lapse whatever else stands. */
export function firstCover(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
): FirstCover | undefined {
  const cover = firstCoverOf(item, state, findings)
  return cover === undefined ? undefined : { cover, digest: digestOf(cover) }
}

/** What stands today in the form that a signed cover has, so that the two can be compared. */
export const coverInFormOf = (signed: string, { cover, first }: ItemState): string =>
  first && hasFirstForm(signed) ? first.cover : cover

function standingFrom(
  item: PlannedItem,
  state: ProgrammeState,
  substance: readonly Shortfall[],
  approvals: readonly ApprovalState[],
): Standing {
  const lapsed = approvals.some(({ approval, holds }) => approval && !holds)
  if (lapsed) return 'lapsed'
  if (substance.length > 0) return isUntouched(item, state) ? 'open' : 'short'
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

const missingApproval = ({ department, approval }: ApprovalState): Shortfall => ({
  kind: 'approval',
  target: department,
  says: approval
    ? `The approval of ${DEPARTMENT_NAMES[department]} (${approval.personName}) lapsed: what it covered has changed.`
    : `Awaiting approval by ${DEPARTMENT_NAMES[department]}.`,
})

/** Everything but signatures that keeps the item from being ready. */
function shortfallsOf(
  item: PlannedItem,
  state: ProgrammeState,
  findings: ReadonlyMap<string, Finding>,
): Shortfall[] {
  const { definition } = item
  return [
    ...(item.setAside
      ? [
          {
            kind: 'set aside' as const,
            target: definition.key,
            says: 'It is proposed as not applicable; quality has not decided.',
          },
        ]
      : []),
    ...emptyParameters(item, state).map((parameter) => ({
      kind: 'value' as const,
      target: parameter.key,
      says: `Not specified: ${parameter.label}.`,
    })),
    ...definition.rules.flatMap((rule) => findingShortfall(definition.key, findings.get(rule.id), state)),
    ...definition.evidence
      .filter(
        ({ kind, required }) =>
          required &&
          !state.evidence.some((entry) => entry.itemKey === definition.key && entry.kind === kind),
      )
      .map(({ kind, label }) => ({
        kind: 'evidence' as const,
        target: kind,
        says: `Evidence is missing: ${label}.`,
      })),
    ...state.actions
      .filter((action) => action.itemKey === definition.key && !isClosed(action))
      .map((action) => ({
        kind: 'action' as const,
        target: String(action.number),
        says:
          waitsFor(action) === 'acceptance'
            ? `Action ${action.number} is answered but not accepted.`
            : `Action ${action.number} to ${DEPARTMENT_NAMES[action.to]} is unanswered.`,
      })),
    ...state.concessions
      .filter(
        (concession) =>
          concession.itemKey === definition.key &&
          CONCESSION_STANDINGS[
            concessionStanding(concession, findings.get(concession.rule), state.facts.today)
          ].waits,
      )
      .map((concession) => ({
        kind: 'concession' as const,
        target: String(concession.number),
        says: `Concession ${concession.number} is asked for and not decided.`,
      })),
  ]
}

function findingShortfall(itemKey: string, finding: Finding | undefined, state: ProgrammeState): Shortfall[] {
  if (!finding || PASSES[finding.verdict]) return []
  if (concessionFor(finding, itemKey, state)) return []
  const title = findRule(finding.rule)?.title ?? finding.rule
  return [{ kind: 'finding', target: finding.rule, says: `${title}: ${finding.found}` }]
}
