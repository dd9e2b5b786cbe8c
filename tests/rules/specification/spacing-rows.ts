import type { SpacingRow } from '@/shared/plan/parameters/spacings'

/** A sound row of the spacing table: 24 V under solder mask, 1 mm apart. */
export const spacing = (over: Partial<SpacingRow> = {}): SpacingRow => ({
  between: '24 V and GND',
  peakV: 24,
  category: 'B4',
  gapMm: 1,
  mains: false,
  solderSide: 'masked',
  parallelMm: undefined,
  travelAngleDeg: undefined,
  ...over,
})
