import { confirmedBoard } from '@/lib/queries/board-files'
import type { ProgrammeView } from '@/lib/queries/programme-reader'
import { valueOf } from '@/app/pictures/value-of'
import { planOfBoard, type BoardPlanRead } from '@/shared/board/plan-of-board'
import { boardLength } from '@/shared/plan/parameters/assessment-inspection'

/** A plan of the board as its confirmed files have it, and which archive that is. */
export interface PlanRead extends BoardPlanRead {
  readonly evidence: string
  readonly fileName: string
}

/** The plan of the board whose files were confirmed last; undefined where there are none with a closed outline. */
export async function planRead(view: ProgrammeView): Promise<PlanRead | undefined> {
  const found = await confirmedBoard(view.state.programme.id, view.state.facts)
  const plan = found && planOfBoard(found.board, valueOf(view, boardLength))
  return plan && { ...plan, evidence: found.archive.evidence, fileName: found.archive.fileName }
}
