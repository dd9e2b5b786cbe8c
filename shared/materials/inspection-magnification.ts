import { fromMemory } from '@/shared/sources/provenance'
import type { Source } from '@/shared/sources/source'

const SOURCE: Source = fromMemory(
  'IPC-A-610E, Table 1-2, inspection magnification by land width: above 1.0, above 0.5 to 1.0, 0.25 to 0.5, and below 0.25 mm',
)

/**
 * Magnification by the width of the land looked at: the range to inspect with,
 * and the power to settle a doubt already raised (referee). Widths in mm,
 * powers as factors; rows from the widest land down. A land exactly on a border belongs
 * to the narrower lands at 1.0 and 0.5 mm, but at 0.25 mm to the wider ones.
 */
export const MAGNIFICATION_BY_LAND = [
  { fromMm: 1.0, included: false, min: 1.5, max: 3, referee: 4, source: SOURCE },
  { fromMm: 0.5, included: false, min: 3, max: 7.5, referee: 10, source: SOURCE },
  { fromMm: 0.25, included: true, min: 7.5, max: 10, referee: 20, source: SOURCE },
  { fromMm: 0, included: false, min: 20, max: 20, referee: 40, source: SOURCE },
] as const satisfies readonly MagnificationRow[]

interface MagnificationRow {
  readonly fromMm: number
  /** Whether a land of just this width is among them. */
  readonly included: boolean
  readonly min: number
  readonly max: number
  readonly referee: number
  readonly source: Source
}

/** The row for a land width in mm. Throws RangeError when the width is not positive. */
export function magnificationFor(landWidthMm: number): MagnificationRow {
  const row = MAGNIFICATION_BY_LAND.find(
    ({ fromMm, included }) => landWidthMm > fromMm || (included && landWidthMm === fromMm),
  )
  if (!row) throw new RangeError('A land has a width greater than zero.')
  return row
}
