import type { ActionAnswer } from './action-answer'
import type { Department } from '@/shared/plan/department'
import type { ItemDefinition } from '@/shared/catalogue/item'
import type { Stage } from '@/shared/plan/stage'
import type { Facts } from '@/shared/rules/facts'
import type { DepartureBounds } from './deviation-permit'
import type { LessonRef } from '@/shared/plan/lesson-ref'

/** All recorded facts of one programme; status, blockers and lapses are derived from it. */
export interface ProgrammeState {
  readonly programme: {
    readonly id: string
    readonly code: string
    readonly title: string
    readonly leadId: string
  }
  readonly members: readonly Member[]
  /** The tailored plan, in route-card order. */
  readonly items: readonly PlannedItem[]
  /** Newest revision of each parameter that has one, by parameter key. */
  readonly revisions: ReadonlyMap<string, CurrentRevision>
  readonly facts: Facts
  readonly evidence: readonly EvidenceEntry[]
  readonly actions: readonly ActionEntry[]
  readonly approvals: readonly ApprovalEntry[]
  readonly concessions: readonly ConcessionEntry[]
  readonly gateSignatures: readonly GateSignatureEntry[]
}

export interface Member {
  readonly personId: string
  readonly name: string
  readonly department: Department
}

export interface PlannedItem {
  readonly definition: ItemDefinition
  readonly added: boolean
  readonly tailoredOut: TailoredOut | null
  /** The lesson that brought it when the programme was opened. */
  readonly lesson: LessonRef | null
}
export interface TailoredOut {
  readonly reason: string
  readonly proposedById: string
  readonly proposedByName: string
  readonly proposedAt: string
  /** Null while quality has not agreed. */
  readonly agreed: { readonly byId: string; readonly byName: string; readonly at: string } | null
}

export interface CurrentRevision {
  readonly parameter: string
  readonly number: number
  readonly value: unknown
  readonly reason: string
  readonly authorId: string
  readonly authorName: string
  readonly at: string
}

export interface EvidenceEntry {
  readonly id: string
  readonly itemKey: string
  readonly kind: string
  readonly note: string
  readonly sha256: string | null
  readonly fileName: string | null
  readonly url: string | null
  readonly addedById: string
  readonly addedByName: string
  readonly at: string
}

export const ACTION_KINDS = ['cost', 'feasibility', 'samples', 'information'] as const
export type ActionKind = (typeof ACTION_KINDS)[number]

export interface ActionEntry {
  readonly id: string
  readonly number: number
  readonly itemKey: string
  readonly from: Department
  readonly to: Department
  /** The person who is asked; null where anybody of the department is. */
  readonly askedOf: { readonly id: string; readonly name: string } | null
  /** The study it was asked in; null where it was asked outside any. */
  readonly study: number | null
  readonly kind: ActionKind
  readonly question: string
  readonly dueOn: string
  readonly askedById: string
  readonly askedByName: string
  readonly askedAt: string
  readonly answer: ActionAnswer | null
  readonly answeredById: string | null
  readonly answeredByName: string | null
  readonly answeredAt: string | null
  readonly files: readonly AnswerFile[]
  readonly outcome: 'accepted' | 'returned' | 'withdrawn' | null
  readonly outcomeWhy: string | null
}

/** A file that belongs to an answer: a quotation, a drawing. */
export interface AnswerFile {
  readonly id: string
  readonly sha256: string
  readonly fileName: string
  readonly note: string
  readonly addedByName: string
  readonly at: string
}

export interface ApprovalEntry {
  readonly id: string
  readonly itemKey: string
  readonly department: Department
  readonly personId: string
  readonly personName: string
  readonly digest: string
  readonly signedContent: string
  /** What the findings found when it was given; null in entries of earlier versions. */
  readonly found: string | null
  readonly at: string
}

export interface ConcessionEntry {
  readonly id: string
  readonly number: number
  readonly itemKey: string
  readonly rule: string
  /** The digest that it was asked for with. */
  readonly findingDigest: string
  /** What the finding it was asked for found: another finding needs another concession. Null where only sentences tell. */
  readonly findingData: string | null
  /** How far a finding that is still to come may depart; null where it was asked for after the fact. */
  readonly permit: DepartureBounds | null
  readonly why: string
  readonly quantity: number | null
  /** 'YYYY-MM-DD', last day it holds. */
  readonly untilOn: string | null
  readonly requestedById: string
  readonly requestedByName: string
  readonly requestedAt: string
  readonly design: SignedOn | null
  readonly quality: SignedOn | null
  readonly refused: (Signed & { readonly why: string }) | null
}
export interface Signed {
  readonly byId: string
  readonly byName: string
  readonly at: string
}
/** A signature from whose day something is counted. */
export interface SignedOn extends Signed {
  /** 'YYYY-MM-DD', its day at the works, by which what is recorded there is dated. */
  readonly on: string
}

export interface GateSignatureEntry {
  readonly id: string
  readonly stage: Stage
  readonly department: Department
  readonly personId: string
  readonly personName: string
  readonly digest: string
  readonly signedContent: string
  readonly merkleRoot: string
  readonly trailSeq: number
  readonly headHash: string
  readonly at: string
}
