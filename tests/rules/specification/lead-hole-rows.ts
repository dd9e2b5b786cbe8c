import type { LeadHole } from '@/shared/plan/parameters/lead-holes'

/** A sound row of the hole table: a 0.8 mm round lead in a 1.15 mm finished hole on a 1.9 mm land. */
export const leadHole = (over: Partial<LeadHole> = {}): LeadHole => ({
  component: 'R1',
  joints: 2,
  soldered: 'machine',
  plated: true,
  leadShape: 'round',
  leadMm: 0.8,
  leadToleranceMm: 0.025,
  holeMm: 1.15,
  holeGiven: 'finished',
  holeToleranceMm: 0.05,
  landMm: 1.9,
  leadThicknessMm: undefined,
  innerLandMm: undefined,
  leadsEach: undefined,
  clinched: undefined,
  leadPositionMm: undefined,
  onGrid: undefined,
  ...over,
})
