import { DRILL_SERIES, type DrillSeries } from '@/shared/materials/preferred-drills'
import { nearestDrill } from '@/shared/physics/drill-choice'
import type { FinishedHole } from '@/shared/physics/finished-hole'
import type { Interval } from '@/shared/physics/lead-clearance'
import type { LeadEnvelope } from '@/shared/physics/lead-envelope'
import { leadHoles, type LeadHole } from '@/shared/plan/parameters/lead-holes'
import { formatQuantity } from '@/shared/quantity/format'
import { roundedDown } from '@/shared/rules/remedy'
import type { Remedy } from '@/shared/rules/finding'

/** Where the row stands in its table, and what holes are made with. */
export interface ProposalTerms {
  readonly index: number
  readonly barrelUm: number
  readonly series: DrillSeries | undefined
}

interface Wanted extends ProposalTerms {
  readonly row: LeadHole
  readonly hole: FinishedHole
  readonly lead: LeadEnvelope
  /** Bounds of the finished hole at its least and its most, mm. */
  readonly minMm: number
  readonly maxMm: number
  /** Kept free at both ends where there is room, mm of diameter. */
  readonly guardMm: number
}

/**
 * The nominal hole, from the preferred drills where one serves, that keeps the
 * finished hole inside its bounds; or, when the tolerances leave no room, the
 * tolerance that would.
 */
export function proposeHole(wanted: Wanted): Remedy {
  const { hole, minMm, maxMm, guardMm } = wanted
  const lowMm = minMm + hole.toleranceMm
  const highMm = maxMm - hole.toleranceMm
  if (lowMm > highMm) return proposeTolerance(wanted)
  const guarded = lowMm + guardMm <= highMm - guardMm ? guardMm : 0
  const wantedMm = (lowMm + highMm) / 2
  const drill =
    drillBetween(wanted, wantedMm, lowMm + guarded, highMm - guarded) ??
    drillBetween(wanted, wantedMm, lowMm, highMm)
  if (drill) {
    const value = wanted.row.holeGiven === 'drilled' ? drill.drillMm : drill.finishedMm
    return cellRemedy(
      wanted,
      value,
      `Drill ${formatQuantity(drill.drillMm, 'mm')}, which finishes at ${formatQuantity(drill.finishedMm, 'mm')}.`,
    )
  }
  const value = wanted.row.holeGiven === 'drilled' ? wantedMm + (hole.drillMm - hole.nominalMm) : wantedMm
  const nominal = Number(value.toFixed(3))
  return cellRemedy(
    wanted,
    nominal,
    `Make the hole ${formatQuantity(nominal, 'mm')} ${wanted.row.holeGiven}; no drill of the preferred series serves.`,
  )
}

/**
 * Bounds of one rule narrowed by those of another, so that mending the one does
 * not break the other; left alone where both leave no hole at its tolerance.
 */
export function withinBoth(own: Interval, other: Interval, toleranceMm: number): Interval {
  const minMm = Math.max(own.minMm, other.minMm)
  const maxMm = Math.min(own.maxMm, other.maxMm)
  return maxMm - minMm >= 2 * toleranceMm ? { minMm, maxMm } : own
}

function drillBetween(wanted: Wanted, wantedMm: number, minMm: number, maxMm: number) {
  const { series, row, barrelUm } = wanted
  if (!series) return undefined
  return nearestDrill({
    wantedMm,
    minMm,
    maxMm,
    barrelUm: row.plated ? barrelUm : 0,
    sizesMm: DRILL_SERIES[series].sizesMm,
  })
}

const cellRemedy = ({ row, index }: Wanted, value: number, message: string): Remedy => ({
  message: `${row.component}: ${message}`,
  cell: { parameter: leadHoles.key, row: index, column: 'holeMm', value },
})

function proposeTolerance({ row, lead, minMm, maxMm }: Wanted): Remedy {
  const forHoleMm = roundedDown((maxMm - minMm) / 2, 0.005)
  if (!(forHoleMm > 0)) {
    const marginMm = maxMm - minMm + (lead.maxMm - lead.minMm)
    return {
      message: `${row.component}: no hole serves. The lead itself varies by ${formatQuantity(lead.maxMm - lead.minMm, 'mm')} where the window leaves ${formatQuantity(marginMm, 'mm')}: ask for a closer lead.`,
    }
  }
  return {
    message: `${row.component}: no hole serves at ± ${formatQuantity(row.holeToleranceMm, 'mm')}. Hold the finished hole within ± ${formatQuantity(forHoleMm, 'mm')} and centre it on ${formatQuantity((minMm + maxMm) / 2, 'mm')} finished.`,
  }
}
