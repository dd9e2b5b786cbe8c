import type { Source } from '@/shared/sources/source'

const SOURCE: Source = { cite: 'IPC-A-610, magnification aids by land width', how: 'from memory' }

/**
 * Magnification by the width of the land looked at: the range to inspect with,
 * and the power to settle a doubt already raised (referee). Widths in mm,
 * powers as factors; rows from the widest land down, `landOverMm` excluded.
 */
export const MAGNIFICATION_BY_LAND = [
  { landOverMm: 1.0, least: 1.5, most: 3, referee: 4, source: SOURCE },
  { landOverMm: 0.5, least: 3, most: 7.5, referee: 10, source: SOURCE },
  { landOverMm: 0.25, least: 7.5, most: 10, referee: 20, source: SOURCE },
  { landOverMm: 0, least: 20, most: 20, referee: 40, source: SOURCE },
] as const satisfies readonly MagnificationRow[]

interface MagnificationRow {
  readonly landOverMm: number
  readonly least: number
  readonly most: number
  readonly referee: number
  readonly source: Source
}

/** The row for a land width in mm. Throws RangeError when the width is not positive. */
export function magnificationFor(landWidthMm: number): MagnificationRow {
  const row = MAGNIFICATION_BY_LAND.find(({ landOverMm }) => landWidthMm > landOverMm)
  if (!row) throw new RangeError('A land has a width greater than zero.')
  return row
}
