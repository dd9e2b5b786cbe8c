import { boardJoints } from '@/shared/plan/board-joints'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { processCosts, solderingProcess, type ProcessCost } from '@/shared/plan/parameters/soldering-process'
import {
  amountOf,
  exactly,
  isExact,
  isKnown,
  knownPartOf,
  isNothing,
  leastOf,
  NO_AMOUNT,
  sumOf,
  times,
  type Amount,
  type KnownAmount,
} from './amount'
import { figuresOpen, reworkToExpect, type ReworkToExpect } from './cost-of-board'
import { amountIn, COST_KIND_FACTS, type CostKind, type CostPer } from './cost-line'
import type { DrawnCosts, DrawnLine } from './drawn-costs'

/** What is said of an alternative's cost: amounts, and defects per million joints where it says so itself. */
export interface PricedAlternative {
  readonly name: string
  readonly defectsPerMillion: number | null
}

/** What an alternative costs over a number of boards. */
export interface OptionCost extends DrawnCosts {
  readonly name: string
  /** Without what recurs. */
  readonly once: Amount
  /** Every board: its own costs, and its share of what a lot costs. */
  readonly perBoard: Amount
  /** Defects to expect with it, and what they cost a board; undefined while the specification does not give it. */
  readonly rework: OptionRework | undefined
  /** What the specification lacks for that. */
  readonly missing: readonly string[]
  /** Every further board: cost of the board, and of its rework and field repair when all alternatives have one. */
  readonly running: Amount
  readonly total: Amount
  /** What the named figures come to, without rework: it costs at least so much. */
  readonly known: KnownAmount
  /** Days until it is there: the longest that is named; undefined where nobody names one. */
  readonly leadTimeDays: Amount | undefined
}
export interface OptionRework extends ReworkToExpect {
  readonly process: string
  readonly joints: number
  readonly defectsPerMillion: Amount
  /** The alternative itself says so, rather than the cost table of its process. */
  readonly stated: boolean
  /** What one defective joint costs, found here or in service. */
  readonly perDefect: Amount
  /** Figures of its process's row without which it is not known, by their headings. */
  readonly open: readonly string[]
}

/** Over what costs are compared. */
export interface CostedOver {
  readonly boards: number
  /** Boards made in one lot; undefined where nobody says, so that what a lot costs cannot be spread. */
  readonly boardsPerLot?: number | undefined
}

/** Cost cases of alternatives over the same boards. */
export interface OptionCostCase {
  readonly boards: number
  readonly costs: readonly OptionCost[]
  /** Rework and field repair are in the sums: every alternative has a figure for them. */
  readonly reworkCounted: boolean
  /** What surely costs least over the boards; undefined while a figure is missing or ranges overlap. */
  readonly least: string | undefined
  /** Which alternative costs least, from which number of boards on; undefined unless every figure is exact. */
  readonly cheapest: readonly CheapestFrom[] | undefined
}
export interface CheapestFrom {
  readonly name: string
  /** Number of boards, not rounded, from which it costs no more than any other. */
  readonly from: number
}

/** An alternative with what it costs, and the specification as it would stand with it. */
export interface Specified {
  readonly alternative: PricedAlternative
  readonly drawn: DrawnCosts
  readonly values: ReadonlyMap<string, unknown>
}

/**
 * Sets what alternatives cost beside the rework and field repair to be expected
 * of them. Money is not discounted; what a lot costs is spread over its boards.
 * RangeError unless there is at least one board.
 */
export function optionCostCase(
  specified: readonly Specified[],
  { boards, boardsPerLot }: CostedOver,
): OptionCostCase {
  if (!(boards >= 1)) throw new RangeError('A cost case needs at least one board.')
  const found = specified.map((one) => reworkOf(one))
  const reworkCounted = found.every(({ rework }) => rework !== undefined)
  const costs = specified.map(({ alternative: { name }, drawn }, position): OptionCost => {
    const { rework, missing = [] } = found[position] ?? {}
    const reworkPerBoard = reworkCounted && rework ? rework.total : NO_AMOUNT
    const { once, perBoard } = sumsOf(drawn, boardsPerLot)
    const running = sumOf([perBoard, reworkPerBoard])
    return {
      ...drawn,
      name,
      once,
      perBoard,
      rework,
      missing,
      running,
      total: sumOf([once, times(running, boards)]),
      known: knownOver(drawn.lines, boards, boardsPerLot),
      leadTimeDays: longest(drawn.lines),
    }
  })
  const exact = costs.flatMap(({ name, once, running }) =>
    isKnown(once) && isExact(once) && isKnown(running) && isExact(running)
      ? [{ name, once: once.from, running: running.from }]
      : [],
  )
  return {
    boards,
    costs,
    reworkCounted,
    least: leastOf(costs, ({ total }) => total)?.name,
    cheapest: exact.length === costs.length ? cheapestByBoards(exact) : undefined,
  }
}

/** The sums of what is drawn: not known while a gap is open in them. */
function sumsOf({ lines, gaps }: DrawnCosts, boardsPerLot: number | undefined) {
  if (gaps.some(({ kind }) => kind !== 'not known' && kind !== 'not named'))
    return { once: 'unknown', perBoard: 'unknown' } as const
  const unnamed = gaps.flatMap((gap) => (gap.kind === 'not named' ? [perOfKind(gap.cost)] : []))
  const of = (per: CostPer): Amount =>
    unnamed.includes(per) ? 'unknown' : sumOf(lines.filter((line) => line.per === per).map(amountIn))
  return { once: of('once'), perBoard: sumOf([of('board'), shareOf(of('lot'), boardsPerLot)]) }
}

const perOfKind = (kind: CostKind): CostPer | null => COST_KIND_FACTS[kind].per

const shareOf = (perLot: Amount, boardsPerLot: number | undefined): Amount =>
  boardsPerLot === undefined ? (isNothing(perLot) ? perLot : 'unknown') : times(perLot, 1 / boardsPerLot)

/** What the named figures come to over the boards; what a lot costs counts for one lot where nobody says how many. */
function knownOver(
  lines: readonly DrawnLine[],
  boards: number,
  boardsPerLot: number | undefined,
): KnownAmount {
  const lots = boardsPerLot === undefined ? 1 : boards / boardsPerLot
  const factor = { board: boards, lot: lots, once: 1 } as const
  return knownPartOf(
    lines.map((line) => (line.per === null ? exactly(0) : times(amountIn(line), factor[line.per]))),
  )
}

/** The longest of the lead times named: what comes last holds up the rest. */
function longest(lines: readonly DrawnLine[]): Amount | undefined {
  const named = lines.filter(({ kind }) => kind === 'lead time').map(amountIn)
  if (named.length === 0) return undefined
  const known = named.filter(isKnown)
  if (known.length < named.length) return 'unknown'
  return {
    from: Math.max(...known.map(({ from }) => from)),
    to: Math.max(...known.map(({ to }) => to)),
  }
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
  const own = { ...row, defectsPerMillion: alternative.defectsPerMillion ?? row.defectsPerMillion }
  const expected = reworkToExpect(own, joints)
  return {
    rework: {
      ...expected,
      process,
      joints,
      defectsPerMillion: amountOf(own.defectsPerMillion),
      stated: alternative.defectsPerMillion !== null,
      perDefect: reworkToExpect({ ...row, defectsPerMillion: 1e6 }, 1).total,
      open: isKnown(expected.total) ? [] : figuresOpen(own),
    },
  }
}

/** A cost known to the figure. */
export interface ExactCost {
  readonly name: string
  readonly once: number
  readonly running: number
}

/**
 * The alternative that costs least for every number of boards from one on: the
 * lower envelope of the lines once + running · boards. Among equals, the one
 * with the lower running cost, then the earlier.
 */
export function cheapestByBoards(lines: readonly ExactCost[]): readonly CheapestFrom[] {
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
 * Undefined where a defect costs nothing, or one of these is not known to the figure.
 */
export function defectsToSave(dearer: OptionCost, cheaper: OptionCost, boards: number): number | undefined {
  const { joints, perDefect = 'unknown' } = dearer.rework ?? {}
  const [more, less] = [bareCost(dearer, boards), bareCost(cheaper, boards)]
  if (!joints || !isExact(perDefect) || perDefect.from === 0 || more === undefined || less === undefined)
    return undefined
  return more > less ? ((more - less) / boards / (joints * perDefect.from)) * 1e6 : 0
}

/** What it costs over the boards without rework; undefined unless known to the figure. */
export function bareCost({ once, perBoard }: OptionCost, boards: number): number | undefined {
  const bare = sumOf([once, times(perBoard, boards)])
  return isKnown(bare) && isExact(bare) ? bare.from : undefined
}
