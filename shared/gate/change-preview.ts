import type { Department } from '@/shared/plan/department'
import type { Requirement } from '@/shared/plan/requirement'
import type { Stage } from '@/shared/plan/stage'
import { sameFinding } from './finding-data'
import type { LapsedSignatures } from './lapsed-signatures'
import { GATE_STANDINGS, type GateState } from './gate'
import { judgeProgramme, type Judgement } from './judgement'
import type { ProgrammeState } from './programme-state'
import type { ItemState } from './item-status'
import { turn, type Turn } from './turn'

/** What a new value would do, before it is saved. */
export interface ChangePreview extends LapsedSignatures {
  /** Findings with another verdict. */
  readonly turned: readonly Turn[]
  /** Findings with the verdict they have, but another number found or another limit. */
  readonly moved: readonly Turn[]
  /** Lapsed approvals that would hold again, because the value they cover comes back. */
  readonly revived: readonly {
    readonly itemKey: string
    readonly item: string
    readonly department: Department
  }[]
}

/**
 * Judges the programme as it would be with another value of one parameter, and
 * compares: only the rules that read the parameter are judged again.
 */
export const changePreview = (
  state: ProgrammeState,
  before: Judgement,
  parameter: string,
  value: unknown,
): ChangePreview => previewBetween(state, before, judgedWith(state, before, new Map([[parameter, value]])))

/** The programme judged with other values of some parameters, and limits stated beside those in force; nothing else is judged again. */
export function judgedWith(
  state: ProgrammeState,
  before: Judgement,
  changes: ReadonlyMap<string, unknown>,
  stated: readonly Requirement[] = [],
): Judgement {
  const values = new Map([...state.facts.values, ...changes])
  const requirements = stated.length > 0 ? [...state.facts.requirements, ...stated] : state.facts.requirements
  return judgeProgramme({ ...state, facts: { ...state.facts, values, requirements } }, before)
}

/** What differs between a programme as judged and as it would be judged after a change. */
export function previewBetween(state: ProgrammeState, before: Judgement, after: Judgement): ChangePreview {
  const turns = turnsOf(state, before, after)
  return {
    turned: turns.filter((turn) => turn.before !== turn.after),
    moved: turns.filter((turn) => turn.before === turn.after),
    approvals: approvalsThatOnly(before, after).map(({ item, department, personName }) => ({
      ...named(item),
      department,
      personName,
    })),
    revived: approvalsThatOnly(after, before).map(({ item, department }) => ({ ...named(item), department })),
    gateSignatures: gateSignaturesThatOnly(before, after),
    gates: before.gates
      .filter((gate, position) => isOpen(gate) && !isOpen(after.gates[position]))
      .map(({ stage }) => stage),
  }
}

const isOpen = (gate: GateState | undefined): boolean =>
  gate !== undefined && GATE_STANDINGS[gate.status].isOpen

const turnsOf = (state: ProgrammeState, before: Judgement, after: Judgement): Turn[] =>
  state.items
    .flatMap(({ definition }) => definition.rules)
    .flatMap(({ id, title }) => {
      const [was, is] = [before.findings.get(id), after.findings.get(id)]
      return was && is && !sameFinding(was, is) ? turn(title, was, is) : []
    })

const holding = ({ items }: Judgement) =>
  items
    .filter(({ item }) => !item.tailoredOut?.agreed)
    .flatMap((item) =>
      item.approvals.flatMap(({ department, approval, holds }) =>
        approval && holds ? { id: approval.id, item, department, personName: approval.personName } : [],
      ),
    )

/** Approvals that hold in one judgement and not in the other. */
function approvalsThatOnly(one: Judgement, other: Judgement) {
  const elsewhere = new Set(holding(other).map(({ id }) => id))
  return holding(one).filter(({ id }) => !elsewhere.has(id))
}

function gateSignaturesThatOnly(one: Judgement, other: Judgement) {
  const status = ({ gates }: Judgement) =>
    gates.flatMap(({ stage, signatures }) =>
      signatures.flatMap(({ department, signature, holds }) =>
        signature && holds
          ? { id: signature.id, stage: stage satisfies Stage, department, personName: signature.personName }
          : [],
      ),
    )
  const elsewhere = new Set(status(other).map(({ id }) => id))
  return status(one)
    .filter(({ id }) => !elsewhere.has(id))
    .map(({ stage, department, personName }) => ({ stage, department, personName }))
}

const named = ({ item: { definition } }: ItemState) => ({ itemKey: definition.key, item: definition.title })
