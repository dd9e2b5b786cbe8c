import { boardJoints } from '@/shared/plan/board-joints'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { processCosts, solderingProcess, type ProcessCost } from '@/shared/plan/parameters/soldering-process'
import { reworkToExpect } from './cost-of-board'
import type { ExpectedReworkCost } from './rework-cost'

/** What is said of an alternative's cost: money, and defects per million joints where it says so itself. */
export interface PricedAlternative {
  readonly name: string
  readonly costOnce: number
  readonly costPerBoard: number
  readonly defectsPerMillion: number | null
}

/** What an alternative costs over a number of boards. */
export interface OptionCost {
  readonly name: string
  readonly once: number
  readonly perBoard: number
  /** Defects to expect with it, and what they cost a board; undefined while the specification does not give it. */
  readonly rework: OptionRework | undefined
  /** What the specification lacks for that. */
  readonly missing: readonly string[]
  /** Every further board: cost of the board, and of its rework and field repair when all alternatives have one. */
  readonly running: number
  readonly total: number
}
export interface OptionRework extends ExpectedReworkCost {
  readonly process: string
  readonly joints: number
  readonly defectsPerMillion: number
  /** The alternative itself says so, rather than the cost table of its process. */
  readonly stated: boolean
  /** What one defective joint costs, found here or in service. */
  readonly perDefect: number
}

/** Cost cases of alternatives over the same boards. */
export interface OptionCostCase {
  readonly boards: number
  readonly costs: readonly OptionCost[]
  /** Rework and field repair are in the sums: every alternative has a figure for them. */
  readonly reworkCounted: boolean
  /** Which alternative costs least, from which number of boards on. */
  readonly cheapest: readonly CheapestFrom[]
}
export interface CheapestFrom {
  readonly name: string
  /** Number of boards, not rounded, from which it costs no more than any other. */
  readonly from: number
}

/** An alternative with the specification as it would stand with it. */
interface Specified {
  readonly alternative: PricedAlternative
  readonly values: ReadonlyMap<string, unknown>
}

/**
 * Sets what alternatives cost beside the rework and field repair to be expected
 * of them. Money is not discounted. RangeError unless there is at least one board.
 */
export function optionCostCase(specified: readonly Specified[], boards: number): OptionCostCase {
  if (!(boards >= 1)) throw new RangeError('A cost case needs at least one board.')
  const found = specified.map((one) => reworkOf(one))
  const reworkCounted = found.every(({ rework }) => rework !== undefined)
  const costs = specified.map(({ alternative: { name, costOnce, costPerBoard } }, position): OptionCost => {
    const { rework, missing = [] } = found[position] ?? {}
    const running = costPerBoard + (reworkCounted ? (rework?.total ?? 0) : 0)
    return {
      name,
      once: costOnce,
      perBoard: costPerBoard,
      rework,
      missing,
      running,
      total: costOnce + running * boards,
    }
  })
  return { boards, costs, reworkCounted, cheapest: cheapestByBoards(costs) }
}

/** Rework and field repair to expect, by the cost table of the process that the alternative uses. */
function reworkOf({
  alternative,
  values,
}: Specified): { rework: OptionRework; missing?: undefined } | { rework?: undefined; missing: string[] } {
  const process = values.get(solderingProcess.key) as ProcessCost['process'] | undefined
  const table = values.get(processCosts.key) as readonly ProcessCost[] | undefined
  const holes = values.get(leadHoles.key) as readonly LeadHole[] | undefined
  const row = table?.find((entry) => entry.process === process)
  const missing = [
    ...(process === undefined ? [solderingProcess.label] : []),
    ...(holes === undefined ? [leadHoles.label] : []),
    ...(row === undefined
      ? [`${processCosts.label}${process && table ? `: the row for ${process}` : ''}`]
      : []),
  ]
  if (process === undefined || holes === undefined || row === undefined) return { missing }
  const joints = boardJoints(holes).total
  const defectsPerMillion = alternative.defectsPerMillion ?? row.defectsPerMillion
  return {
    rework: {
      ...reworkToExpect({ ...row, defectsPerMillion }, joints),
      process,
      joints,
      defectsPerMillion,
      stated: alternative.defectsPerMillion !== null,
      perDefect: reworkToExpect({ ...row, defectsPerMillion: 1e6 }, 1).total,
    },
  }
}

/**
 * The alternative that costs least for every number of boards from one on: the
 * lower envelope of the lines once + running · boards. Among equals, the one
 * with the lower running cost, then the earlier.
 */
export function cheapestByBoards(
  lines: readonly Pick<OptionCost, 'name' | 'once' | 'running'>[],
): readonly CheapestFrom[] {
  const segments: CheapestFrom[] = []
  let from = 1
  let current = min(lines, (line) => line.once + line.running)
  while (current) {
    segments.push({ name: current.name, from })
    const { once, running } = current
    const crossings = lines
      .filter((line) => line.running < running)
      .map((line) => ({ line, at: (line.once - once) / (running - line.running) }))
    const next = crossings.length > 0 ? Math.min(...crossings.map(({ at }) => at)) : Infinity
    current = min(
      crossings.filter(({ at }) => at === next).map(({ line }) => line),
      (line) => line.running,
    )
    from = next
  }
  return segments
}

function min<Line extends { readonly running: number }>(
  lines: readonly Line[],
  measure: (line: Line) => number,
): Line | undefined {
  return [...lines].sort((a, b) => measure(a) - measure(b) || a.running - b.running)[0]
}

/**
 * How many defects per million joints a dearer alternative must save against a
 * cheaper one to pay for itself: the difference of their costs a board, the
 * outlay spread over the boards, divided by joints and by what a defect costs.
 * Undefined where a defect costs nothing.
 */
export function defectsToSave(dearer: OptionCost, cheaper: OptionCost, boards: number): number | undefined {
  const { joints, perDefect } = dearer.rework ?? {}
  if (!joints || !perDefect) return undefined
  const difference = dearer.perBoard - cheaper.perBoard + (dearer.once - cheaper.once) / boards
  return difference > 0 ? (difference / (joints * perDefect)) * 1e6 : 0
}
