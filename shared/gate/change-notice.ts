import type { Actor } from '@/shared/actor'
import { findLimit, findParameter } from '@/shared/catalogue/standard-plan'
import { DEPARTMENT_NAMES, DEPARTMENTS, type Department } from '@/shared/plan/department'
import { sameValue } from '@/shared/plan/same-value'
import { canonicalJson } from '@/shared/trail/canonical-json'
import { sha256 } from '@/shared/trail/sha256'
import type { NoticeEffect } from './notice-effect'
import type { ProgrammeState } from './programme-state'
import type { NoticeChange, ProposedChange } from './proposed-change'

export interface NoticeAnswer {
  readonly department: Department
  readonly agrees: boolean
  readonly reason: string
  readonly digest: string
  readonly personId: string
  readonly personName: string
  readonly at: string
}

/** What became of a notice in the end. */
export const DISPOSITIONS = ['adopted', 'refused', 'withdrawn'] as const
export type Disposition = (typeof DISPOSITIONS)[number]

export interface ChangeNotice {
  readonly number: number
  readonly title: string
  readonly reason: string
  /** In the installation's currency; null while nobody knows. */
  readonly costPerBoard: number | null
  readonly costOnce: number | null
  readonly openedById: string
  readonly openedByName: string
  readonly openedAt: string
  /** Those that stand, in the order they were put in. */
  readonly changes: readonly NoticeChange[]
  /** Every answer given, oldest first. */
  readonly answers: readonly NoticeAnswer[]
  readonly disposition: {
    readonly kind: Disposition
    readonly why: string
    readonly byName: string
    readonly at: string
  } | null
}

/** What departments answer to, and whether the newest answer of each is to that. */
export interface NoticeStanding {
  readonly notice: ChangeNotice
  /** SHA-256 over what is proposed, which findings it would turn and what it costs. */
  readonly digest: string
  /** What has moved under a change since it was proposed, a sentence each. */
  readonly overtaken: readonly string[]
  readonly answers: readonly {
    readonly department: Department
    readonly answer: NoticeAnswer | null
    readonly holds: boolean
  }[]
}

/** An answer holds while the notice proposes the same at the same cost, and would turn the same findings. */
export function noticeStanding(
  notice: ChangeNotice,
  state: ProgrammeState,
  effect: NoticeEffect,
): NoticeStanding {
  const proposed = {
    notice: notice.number,
    changes: notice.changes.map(({ change }) => ({ ...change })),
    turned: effect.preview.turned.map(({ rule, before, after }) => ({ rule, before, after })),
  }
  const digest = sha256(
    canonicalJson({ ...proposed, costPerBoard: notice.costPerBoard, costOnce: notice.costOnce }),
  )
  // Answers of an earlier version are to what is proposed alone, and go on holding over it.
  const firstDigest = sha256(canonicalJson(proposed))
  return {
    notice,
    digest,
    overtaken: notice.changes.flatMap(({ change }) => overtakenBy(change, state) ?? []),
    answers: DEPARTMENTS.map((department) => {
      const answer = notice.answers.findLast((entry) => entry.department === department) ?? null
      return { department, answer, holds: answer !== null && [digest, firstDigest].includes(answer.digest) }
    }),
  }
}

function overtakenBy(change: ProposedChange, state: ProgrammeState): string | undefined {
  switch (change.kind) {
    case 'value': {
      const label = findParameter(change.parameter)?.label ?? change.parameter
      const current = state.revisions.get(change.parameter)
      if ((current?.number ?? 0) !== change.seen)
        return `${label} was revised since (revision ${current?.number ?? 0}, ${current?.authorName ?? ''}). Put the change in again, or drop it.`
      return sameValue(current?.value, change.value) ? `${label} has this value already. Drop it.` : undefined
    }
    case 'requirement':
      return undefined
    case 'withdrawal':
      return state.facts.requirements.some(({ id }) => id === change.requirement)
        ? undefined
        : `The requirement of ${change.document} on ${findLimit(change.limit)?.label ?? change.limit} does not stand any more. Drop the change.`
  }
}

const closed = ({ number, disposition }: ChangeNotice): string | undefined =>
  disposition ? `Change notice ${number} was ${disposition.kind}; it stays as it is.` : undefined

/** Why nothing can be put into a notice or taken out; undefined while it is open. */
export const editRefusal = (notice: ChangeNotice): string | undefined => closed(notice)

/** Only who put a change in, who opened the notice, or the lead takes it out. */
export function dropRefusal(
  notice: ChangeNotice,
  change: Pick<NoticeChange, 'authorId'>,
  actor: Actor,
): string | undefined {
  const own = [change.authorId, notice.openedById].includes(actor.personId)
  return (
    closed(notice) ??
    (actor.leads || own
      ? undefined
      : 'Only who put the change in, who opened the notice, or the lead takes it out.')
  )
}

/** Why a person cannot answer for a department: three departments answer by three people. */
export function answerRefusal(
  { notice, answers }: NoticeStanding,
  personId: string,
  department: Department,
): string | undefined {
  if (notice.disposition) return closed(notice)
  if (notice.changes.length === 0) return 'It proposes nothing yet.'
  const other = answers.find(
    (entry) => entry.holds && entry.answer?.personId === personId && entry.department !== department,
  )
  return other
    ? `You have answered for ${DEPARTMENT_NAMES[other.department]}. Each department’s answer comes from another person.`
    : undefined
}

/**
 * Why a person cannot adopt a notice now; undefined when every department agrees
 * to it as it stands. Nobody adopts what they alone proposed.
 */
export function noticeAdoptionRefusal(
  { notice, overtaken, answers }: NoticeStanding,
  personId: string,
): string | undefined {
  if (notice.disposition) return closed(notice)
  if (notice.changes.length === 0) return 'It proposes nothing yet.'
  const [first] = overtaken
  if (first) return first
  const objection = answers.find(({ answer, holds }) => holds && answer && !answer.agrees)
  if (objection) return `${DEPARTMENT_NAMES[objection.department]} objects: ${objection.answer?.reason ?? ''}`
  const missing = answers.filter(({ holds }) => !holds).map(({ department }) => DEPARTMENT_NAMES[department])
  if (missing.length > 0) return `Not yet agreed as it stands by ${missing.join(', ')}.`
  return notice.changes.every(({ authorId }) => authorId === personId)
    ? 'You proposed every change of it. The lead or somebody of quality who did not adopts it.'
    : undefined
}

/** Who opened a notice or the lead withdraws it; the lead or quality refuses it, over an objection. */
export function closingRefusal(
  { notice, answers }: NoticeStanding,
  disposition: Exclude<Disposition, 'adopted'>,
  actor: Actor,
): string | undefined {
  if (notice.disposition) return closed(notice)
  if (disposition === 'withdrawn')
    return actor.leads || actor.personId === notice.openedById
      ? undefined
      : 'Only who opened the notice, or the lead, withdraws it.'
  if (!actor.leads && !actor.departments.includes('quality')) return 'The lead or quality refuses a notice.'
  return answers.some(({ answer, holds }) => holds && answer && !answer.agrees)
    ? undefined
    : 'No department objects to it as it stands. It can be withdrawn.'
}
