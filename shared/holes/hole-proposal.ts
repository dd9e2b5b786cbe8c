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
  readonly wallUm: number
  readonly series: DrillSeries | undefined
}

interface Wanted extends ProposalTerms {
  readonly row: LeadHole
  readonly hole: FinishedHole
  readonly lead: LeadEnvelope
  /** Bounds of the finished hole at its least and its most, mm. */
  readonly leastMm: number
  readonly mostMm: number
  /** Kept free at both ends where there is room, mm of diameter. */
  readonly guardMm: number
}

/**
 * The nominal hole, from the preferred drills where one serves, that keeps the
 * finished hole inside its bounds; or, when the tolerances leave no room, the
 * tolerance that would.
 */
export function proposeHole(wanted: Wanted): Remedy {
  const { hole, leastMm, mostMm, guardMm } = wanted
  const lowMm = leastMm + hole.toleranceMm
  const highMm = mostMm - hole.toleranceMm
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
  const leastMm = Math.max(own.leastMm, other.leastMm)
  const mostMm = Math.min(own.mostMm, other.mostMm)
  return mostMm - leastMm >= 2 * toleranceMm ? { leastMm, mostMm } : own
}

function drillBetween(wanted: Wanted, wantedMm: number, leastMm: number, mostMm: number) {
  const { series, row, wallUm } = wanted
  if (!series) return undefined
  return nearestDrill({
    wantedMm,
    leastMm,
    mostMm,
    wallUm: row.plated ? wallUm : 0,
    sizesMm: DRILL_SERIES[series].sizesMm,
  })
}

const cellRemedy = ({ row, index }: Wanted, value: number, says: string): Remedy => ({
  says: `${row.component}: ${says}`,
  cell: { parameter: leadHoles.key, row: index, column: 'holeMm', value },
})

function proposeTolerance({ row, lead, leastMm, mostMm }: Wanted): Remedy {
  const forHoleMm = roundedDown((mostMm - leastMm) / 2, 0.005)
  if (!(forHoleMm > 0)) {
    const roomMm = mostMm - leastMm + (lead.mostMm - lead.leastMm)
    return {
      says: `${row.component}: no hole serves. The lead itself varies by ${formatQuantity(lead.mostMm - lead.leastMm, 'mm')} where the window leaves ${formatQuantity(roomMm, 'mm')}: ask for a closer lead.`,
    }
  }
  return {
    says: `${row.component}: no hole serves at ± ${formatQuantity(row.holeToleranceMm, 'mm')}. Hold the finished hole within ± ${formatQuantity(forHoleMm, 'mm')} and centre it on ${formatQuantity((leastMm + mostMm) / 2, 'mm')} finished.`,
  }
}
