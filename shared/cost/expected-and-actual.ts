import { boardJoints } from '@/shared/plan/board-joints'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import type { Parameter } from '@/shared/plan/parameter'
import { processCosts, solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { RecordOf } from '@/shared/records/record-kinds'
import { reworkToExpect } from './cost-of-board'

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

/** Rework that no defective joint caused. */
const NO_DEFECT: readonly RecordOf<'rework'>['defect'][] = ['component', 'change']

/**
 * Holds what defective joints cost against what the cost table of the chosen
 * process leads one to expect of as many boards: rework of joints, and returns
 * traced to a solder joint; other rework and returns are not the process's.
 * Boards in service are still young, so what was expected of their whole life
 * is not yet due. Rework without a price for the hour counts its material alone.
 * Undefined while the cost table or the process is not specified, or no board is made.
 */
export function expectedAndActual(
  values: ReadonlyMap<string, unknown>,
  boards: number,
  records: {
    readonly rework: readonly RecordOf<'rework'>[]
    readonly returns: readonly RecordOf<'field-return'>[]
  },
): ExpectedAndActual | undefined {
  const read = <T>(parameter: Parameter<T>): T | undefined => values.get(parameter.key) as T | undefined
  const row = read(processCosts)?.find(({ process }) => process === read(solderingProcess))
  const holes = read(leadHoles)
  if (!row || !holes || boards === 0) return undefined
  const { here, inService } = reworkToExpect(row, boardJoints(holes, read(surfaceMountJoints)).total)
  const hour = read(workingHourCost) ?? 0
  const actualHere = records.rework
    .filter(({ defect }) => !NO_DEFECT.includes(defect))
    .reduce((sum, { minutes, material }) => sum + (minutes / 60) * hour + (material ?? 0), 0)
  const actualInService = records.returns
    .filter(({ cause }) => cause === 'solder-joint')
    .reduce((sum, { cost }) => sum + (cost ?? 0), 0)
  const [expectedHere, expectedInService] = [here * boards, inService * boards]
  return {
    boards,
    expectedHere,
    expectedInService,
    actualHere,
    actualInService,
    saved: expectedHere + expectedInService - actualHere - actualInService,
  }
}
