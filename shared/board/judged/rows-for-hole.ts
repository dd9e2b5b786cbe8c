import type { LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { BoardHole } from '../hole'
import { narrowestLand } from '../hole-groups'

/** How near sizes must be for a hole of the files to be one of a row, mm: drill files round inches to 1.3 µm. */
const SAME_MM = 0.02

const alike = (one: number, other: number | undefined): boolean =>
  other !== undefined && Math.abs(one - other) <= SAME_MM

/** Rows of the table of holes and leads with holes of this size and plating. */
export const rowsOfSize = (
  rows: readonly LeadHole[],
  { diameterMm, plated }: Pick<BoardHole, 'diameterMm' | 'plated'>,
): LeadHole[] =>
  rows.filter((row) => alike(row.holeMm, diameterMm) && (plated === undefined || row.plated === plated))

/** Rows that a hole of the files can be of: those with its land too, where there are any. */
export function rowsForHole(rows: readonly LeadHole[], hole: BoardHole): LeadHole[] {
  const ofSize = rowsOfSize(rows, hole)
  const withLand = ofSize.filter(({ landMm }) => alike(landMm, narrowestLand(hole)))
  return withLand.length > 0 ? withLand : ofSize
}
