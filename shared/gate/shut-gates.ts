import { isLater, type Stage } from '@/shared/plan/stage'
import type { RecordKind } from '@/shared/records/record-kind'
import { GATE_STANDINGS, type GateState } from './gate'

/** The stages before this one whose gate is not open today, in their order. */
export const gatesShutBefore = (stage: Stage, gates: readonly GateState[]): Stage[] =>
  gates
    .filter((gate) => isLater(stage, gate.stage) && !GATE_STANDINGS[gate.status].isOpen)
    .map((gate) => gate.stage)

/** Assemblies are looked at in the last stage; what is before it should be agreed by then. */
export const STAGE_OF_INSPECTION: Stage = 'assessment'

/** Whether records of this kind tell of work on assemblies, so that it matters whether earlier gates were open. */
export const tellsOfWork = ({ assemblies }: Pick<RecordKind, 'assemblies'>): boolean => assemblies !== null
