import type { SpacingCategory, SpacingTable } from '@/shared/materials/conductor-spacings'

/**
 * Least spacing in mm between conductors at a peak voltage. Above 500 V the
 * table's last row grows by so much a volt.
 * Throws RangeError on a negative voltage.
 */
export function minSpacingMm(table: SpacingTable, category: SpacingCategory, peakV: number): number {
  if (!(peakV >= 0)) throw new RangeError('A voltage must not be negative here: give its size.')
  const row = table.rows.find(({ upToV }) => peakV <= upToV)
  if (row) return row[category]
  const last = table.rows[table.rows.length - 1]
  if (!last) throw new RangeError('A spacing table has at least one row.')
  return last[category] + (peakV - last.upToV) * table.perVoltMm[category]
}
