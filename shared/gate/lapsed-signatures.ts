import type { Department } from '@/shared/plan/department'
import { STAGES, type Stage } from '@/shared/plan/stage'
import { limitsBehind, parametersBehind } from './signed-content'
import { GATE_STANDINGS } from './gate'
import type { Judgement } from './judgement'
import type { ItemState } from './item-status'

/** Signatures that a change undoes: approvals of items, and signatures on gates. */
export interface LapsedSignatures {
  readonly approvals: readonly {
    readonly itemKey: string
    readonly item: string
    readonly department: Department
    readonly personName: string
  }[]
  readonly gateSignatures: readonly {
    readonly stage: Stage
    readonly department: Department
    readonly personName: string
  }[]
  /** Gates that are open today and would have to be signed again. */
  readonly gates: readonly Stage[]
}

/**
 * What any other value of a parameter would undo. An approval covers the value
 * itself, so that this does not depend on what the new value is; a gate rests
 * on the items of its stage and on the gate before.
 */
export const lapsedByParameter = (parameter: string, judgement: Judgement): LapsedSignatures =>
  reachOver(judgement, ({ item }) => parametersBehind(item).includes(parameter))

/** What another requirement on a limit would make lapse, in the same way. */
export const lapsedByLimit = (limit: string, judgement: Judgement): LapsedSignatures =>
  reachOver(judgement, ({ item }) => limitsBehind(item).some(({ key }) => key === limit))

function reachOver(judgement: Judgement, rests: (item: ItemState) => boolean): LapsedSignatures {
  const reached = judgement.items.filter(rests)
  const firstStage = Math.min(...reached.map(({ item }) => STAGES.indexOf(item.definition.stage)))
  const gates = judgement.gates.filter(({ stage }) => STAGES.indexOf(stage) >= firstStage)
  return {
    approvals: reached.flatMap(({ item: { definition, tailoredOut }, approvals }) =>
      tailoredOut?.agreed
        ? []
        : approvals.flatMap(({ department, approval, holds }) =>
            approval && holds
              ? {
                  itemKey: definition.key,
                  item: definition.title,
                  department,
                  personName: approval.personName,
                }
              : [],
          ),
    ),
    gateSignatures: gates.flatMap(({ stage, signatures }) =>
      signatures.flatMap(({ department, signature, holds }) =>
        signature && holds ? { stage, department, personName: signature.personName } : [],
      ),
    ),
    gates: gates.filter(({ status }) => GATE_STANDINGS[status].isOpen).map(({ stage }) => stage),
  }
}
