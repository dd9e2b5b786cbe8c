import { finishedHole, type FinishedHole } from '@/shared/physics/finished-hole'
import { leadEnvelope, type LeadEnvelope } from '@/shared/physics/lead-envelope'
import type { LeadHole } from '@/shared/plan/parameters/lead-holes'

/** The finished hole of a row; an unplated hole has no metal on its wall. */
export const holeOf = (row: LeadHole, barrelUm: number): FinishedHole =>
  finishedHole({
    diameterMm: row.holeMm,
    toleranceMm: row.holeToleranceMm,
    given: row.holeGiven,
    barrelUm: row.plated ? barrelUm : 0,
  })

/**
 * The circle the lead of a row needs.
 * Throws RangeError when a rectangular or flat lead lacks its thickness.
 */
export function leadOf(row: LeadHole): LeadEnvelope {
  if (hasTwoSides(row) && row.leadThicknessMm === undefined) {
    throw new RangeError('The thickness of the lead is missing: fill it in for rectangular and flat leads.')
  }
  return leadEnvelope({
    shape: row.leadShape,
    widthMm: row.leadMm,
    thicknessMm: row.leadThicknessMm,
    toleranceMm: row.leadToleranceMm,
  })
}

export const hasTwoSides = ({ leadShape }: LeadHole): boolean =>
  leadShape === 'rectangular' || leadShape === 'flat'
