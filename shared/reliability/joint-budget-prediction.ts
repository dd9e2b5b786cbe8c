import type { BoardJoints } from '@/shared/plan/board-joints'
import type { ValueOf } from '@/shared/plan/parameter'
import type { boardQuality, failureRateEdition } from '@/shared/plan/parameters/joint-budget'
import type { LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { environment } from '@/shared/plan/parameters/programme'
import { formatQuantity } from '@/shared/quantity/format'
import type { WorkingLine } from '@/shared/rules/finding'
import type { HandbookRevision } from '@/shared/reliability/models/connection-rates'
import {
  complexityFactor,
  connectionFailureRate,
  platedHolesFailureRate,
} from '@/shared/reliability/models/joint-failure-rate'
import type { FailureRate, ReliabilityModel } from '@/shared/reliability/models/model'

const REVISIONS: Record<ValueOf<typeof failureRateEdition>, HandbookRevision> = {
  'notice-2': 'Notice 2, 1995',
  base: 'base issue, 1991',
}

interface Board {
  readonly holes: readonly LeadHole[]
  readonly joints: BoardJoints
  readonly layers: number
  readonly environment: ValueOf<typeof environment>
  readonly quality: ValueOf<typeof boardQuality>
}

export interface Prediction {
  /** Each for all joints of its kind on the board. */
  readonly rates: readonly FailureRate[]
  readonly models: readonly ReliabilityModel[]
  readonly working: readonly WorkingLine[]
}

/**
 * The rates of all joints of a board by one edition of the handbook: plated
 * holes by section 16.1; unplated and surface-mount joints by section 17.1, which has one row of
 * machine soldering (“reflow solder”) and none of the wave.
 */
export function predictedRates(board: Board, edition: keyof typeof REVISIONS): Prediction {
  const revision = REVISIONS[edition]
  const plated = board.holes.filter((row) => row.plated)
  const unplated = board.holes.filter((row) => !row.plated)
  const parts = [
    ...(plated.length > 0 ? [platedPart(board, plated, revision)] : []),
    ...(unplated.length > 0 ? unplatedParts(board, unplated, revision) : []),
    ...(board.joints.surfaceMount > 0
      ? [connectionPart('reflow solder', board.joints.surfaceMount, 'surface-mount joints', board, revision)]
      : []),
  ]
  return {
    rates: parts.map(({ rate }) => rate),
    models: [...new Map(parts.map(({ rate }) => [rate.model.name, rate.model])).values()],
    working: parts.map(({ working }) => working),
  }
}

const sumOf = (rows: readonly LeadHole[]): number => rows.reduce((sum, row) => sum + row.joints, 0)

function platedPart(board: Board, plated: readonly LeadHole[], revision: HandbookRevision) {
  const machineSoldered = sumOf(plated.filter((row) => row.soldered === 'machine'))
  const handSoldered = sumOf(plated.filter((row) => row.soldered === 'hand'))
  const topQuality = board.quality === 'qualified'
  const rate = platedHolesFailureRate(
    { wiring: 'printed wiring', machineSoldered, handSoldered, circuitPlanes: board.layers, topQuality },
    board.environment,
    revision,
  )
  const working: WorkingLine = {
    label: 'Plated holes, section 16.1',
    formula: 'λ_b · (N₁ · π_C + N₂ · (π_C + 13)) · π_Q · π_E',
    numbers: `${revision}: N₁ = ${machineSoldered} by machine, N₂ = ${handSoldered} by hand, π_C = ${formatQuantity(complexityFactor(board.layers), '1')} for ${board.layers} planes, π_Q = ${topQuality ? 1 : 2}, environment ${board.environment}`,
    result: formatQuantity(rate.fit, 'FIT'),
  }
  return { rate, working }
}

/** Joints of unplated holes, those of the machine apart from those of the iron. */
const unplatedParts = (board: Board, rows: readonly LeadHole[], revision: HandbookRevision) =>
  (
    [
      ['machine', 'reflow solder'],
      ['hand', 'hand solder, not wrapped'],
    ] as const
  ).flatMap(([how, kind]) => {
    const joints = sumOf(rows.filter((row) => row.soldered === how))
    return joints > 0 ? [connectionPart(kind, joints, `unplated holes by ${how}`, board, revision)] : []
  })

function connectionPart(
  kind: 'hand solder, not wrapped' | 'reflow solder',
  joints: number,
  what: string,
  board: Board,
  revision: HandbookRevision,
) {
  const each = connectionFailureRate(kind, board.environment, revision)
  const rate: FailureRate = { ...each, fit: each.fit * joints }
  const working: WorkingLine = {
    label: `${what}, section 17.1 (row “${kind}”)`,
    formula: 'N · λ_b · π_E',
    numbers: `${revision}: N = ${joints}, ${formatQuantity(each.fit, 'FIT')} each in ${board.environment}`,
    result: formatQuantity(rate.fit, 'FIT'),
  }
  return { rate, working }
}
