import type { Department } from '@/shared/plan/department'
import { STAGES, type Stage } from '@/shared/plan/stage'
import { parametersBehind } from './cover'
import type { Judgement } from './judgement'

/** Signatures that a change undoes: approvals of items, and signatures on gates. */
export interface ChangeReach {
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
export function reachOf(parameter: string, judgement: Judgement): ChangeReach {
  const reached = judgement.items.filter(({ item }) => parametersBehind(item).includes(parameter))
  const firstStage = Math.min(...reached.map(({ item }) => STAGES.indexOf(item.definition.stage)))
  const gates = judgement.gates.filter(({ stage }) => STAGES.indexOf(stage) >= firstStage)
  return {
    approvals: reached.flatMap(({ item: { definition, setAside }, approvals }) =>
      setAside?.agreed
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
    gates: gates.filter(({ standing }) => standing === 'open').map(({ stage }) => stage),
  }
}
