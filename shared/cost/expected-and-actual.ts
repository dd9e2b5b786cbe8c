import { boardJoints } from '@/shared/plan/board-joints'
import { workingHourCost } from '@/shared/plan/parameters/assessment-proof'
import { surfaceMountJoints } from '@/shared/plan/parameters/joint-budget'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import type { Parameter } from '@/shared/plan/parameter'
import { processCosts, solderingProcess } from '@/shared/plan/parameters/soldering-process'
import type { RecordOf } from '@/shared/records/record-kinds'
import { amountOf, exactly, lessAmount, sumOf, times, type Amount } from './amount'
import { reworkToExpect } from './cost-of-board'

/** Rework and repair in service: what the specification expected of the boards made, and what came. */
export interface ExpectedAndActual {
  readonly boards: number
  readonly expectedHere: Amount
  readonly expectedInService: Amount
  /** Both together: of ranges not always the sum of their ends, for what is found here does not fail in service. */
  readonly expected: Amount
  /** What it cost; not known while some of it has no price. */
  readonly actualHere: Amount
  readonly actualInService: Amount
  /** Expected less actual; below zero when it came dearer. */
  readonly saved: Amount
}

/** Rework that no defective joint caused. */
const NO_DEFECT: readonly RecordOf<'rework'>['defect'][] = ['component', 'change']

/**
 * Holds what defective joints cost against what the cost table of the chosen
 * process leads one to expect of as many boards: rework of joints, and returns
 * traced to a solder joint; other rework and returns are not the process's.
 * Boards in service are still young, so what was expected of their whole life
 * is not yet due. Rework whose hours have no price, and a return without a cost, are not known.
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
  const { here, inService, total } = reworkToExpect(row, boardJoints(holes, read(surfaceMountJoints)).total)
  const hour = amountOf(read(workingHourCost))
  const actualHere = sumOf(
    records.rework
      .filter(({ defect }) => !NO_DEFECT.includes(defect))
      .map(({ minutes, material }) => sumOf([times(hour, minutes / 60), exactly(material ?? 0)])),
  )
  const actualInService = sumOf(
    records.returns.filter(({ cause }) => cause === 'solder-joint').map(({ cost }) => amountOf(cost)),
  )
  const expected = times(total, boards)
  return {
    boards,
    expectedHere: times(here, boards),
    expectedInService: times(inService, boards),
    expected,
    actualHere,
    actualInService,
    saved: lessAmount(expected, sumOf([actualHere, actualInService])),
  }
}
