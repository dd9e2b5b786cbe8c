import { boardJoints } from '@/shared/plan/board-joints'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import type { Parameter } from '@/shared/plan/parameter'
import { processCosts, solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { reworkToExpect } from '@/shared/rules/specification/process-economy'

/** Rework and repair in service: what the specification expected of the boards made, and what came. */
export interface ExpectedAndActual {
  readonly boards: number
  readonly expectedHere: number
  readonly expectedInService: number
  readonly actualHere: number
  readonly actualInService: number
  /** Expected less actual; below zero when it came dearer. */
  readonly saved: number
}

/**
 * Holds the failure costs recorded against those that the cost table of the
 * chosen process leads one to expect of as many boards. Boards in service are
 * still young, so what was expected of their whole life is not yet due.
 * Undefined while the cost table or the process is not specified, or no board is made.
 */
export function expectedAndActual(
  values: ReadonlyMap<string, unknown>,
  boards: number,
  actual: { readonly here: number; readonly inService: number },
): ExpectedAndActual | undefined {
  const read = <T>(parameter: Parameter<T>): T | undefined => values.get(parameter.key) as T | undefined
  const row = read(processCosts)?.find(({ process }) => process === read(solderingProcess))
  const holes = read(leadHoles)
  if (!row || !holes || boards === 0) return undefined
  const { here, inService } = reworkToExpect(row, boardJoints(holes, read(surfaceMountJoints)).total)
  const [expectedHere, expectedInService] = [here * boards, inService * boards]
  return {
    boards,
    expectedHere,
    expectedInService,
    actualHere: actual.here,
    actualInService: actual.inService,
    saved: expectedHere + expectedInService - actual.here - actual.inService,
  }
}
