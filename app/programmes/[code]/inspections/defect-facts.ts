import { governingFor, valueOf } from '@/app/pictures/value-of'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { boardJoints } from '@/shared/plan/board-joints'
import { budgetConfidenceMin } from '@/shared/plan/limits/assessment-inspection'
import { defectFreeBoards, surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { defectRecord, type DefectRecord, type ElectricalTest } from '@/shared/inspection/defect-record'
import { budgetByKind, type HeldToBudget } from '@/shared/inspection/budget-by-kind'
import { recordsOfKind } from '@/shared/records/records-of-kind'

/** All that the pages of inspection show of defects, from the recorded facts. */
export interface DefectFacts {
  readonly record: DefectRecord
  readonly tests: readonly ElectricalTest[]
  readonly confidencePct: number
  /** Empty where the specification sets no budget yet, or nothing can be held against it. */
  readonly held: readonly HeldToBudget[]
}

export function defectFactsOf(view: ProgrammeView): DefectFacts {
  const { records } = view.state.facts
  const tests = recordsOfKind(records, 'electrical-test')
  const holes = valueOf(view, leadHoles)
  const free = valueOf(view, defectFreeBoards)
  const confidencePct = governingFor(view, budgetConfidenceMin).value
  const surfaceMount = valueOf(view, surfaceMountJoints)
  const joints = holes && boardJoints(holes, surfaceMount).total
  const record = defectRecord(records.inspections, tests, joints)
  // A budget is of all joints of the board: of none while those on the surface are not specified.
  const askable =
    joints !== undefined &&
    surfaceMount !== undefined &&
    free !== undefined &&
    confidencePct > 0 &&
    confidencePct < 100
  const held = askable
    ? budgetByKind(record, {
        jointsOnBoard: joints,
        defectFreeBoards: free / 100,
        confidence: confidencePct / 100,
      })
    : []
  return { record, tests, confidencePct, held }
}
