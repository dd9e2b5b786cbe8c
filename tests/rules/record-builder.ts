import type { LeadHole } from '@/shared/plan/parameters/lead-holes'
import type { Inspection } from '@/shared/records/inspection'
import type { RecordOf } from '@/shared/records/record-kinds'

/** One kind of joint: so many of them, by machine, on lands of 1.8 mm. */
export const holes = (joints: number, over: Partial<LeadHole> = {}): LeadHole => ({
  component: 'T1',
  joints,
  soldered: 'machine',
  plated: true,
  leadShape: 'round',
  leadMm: 0.8,
  leadToleranceMm: 0.02,
  holeMm: 1.1,
  holeGiven: 'finished',
  holeToleranceMm: 0.05,
  landMm: 1.8,
  leadThicknessMm: undefined,
  innerLandMm: undefined,
  leadsEach: undefined,
  clinched: undefined,
  leadPositionMm: undefined,
  onGrid: undefined,
  ...over,
})

/** An assembly inspected; `defective` joints J1, J2 … each with a bridge. */
export const inspection = (
  assembly: string,
  jointsSeen: number,
  defective = 0,
  over: Partial<Inspection> = {},
): Inspection => ({
  id: `inspection-${assembly}`,
  assembly,
  inspectedOn: '2026-02-10',
  inspector: 'C. Hale',
  magnification: 3,
  jointsSeen,
  defects: Array.from({ length: defective }, (_, index) => ({
    kind: 'bridge' as const,
    joint: `J${index + 1}`,
  })),
  note: '',
  ...over,
})

export const electrical = (over: Partial<RecordOf<'electrical-test'>> = {}): RecordOf<'electrical-test'> => ({
  id: 'e1',
  testedOn: '2026-02-12',
  assembly: 'batch 7',
  tested: 20,
  passedFirst: 20,
  jointFailures: 0,
  defect: undefined,
  joint: undefined,
  cause: undefined,
  ...over,
})

export const run = (
  assemblies: number,
  over: Partial<RecordOf<'soldering-run'>> = {},
): RecordOf<'soldering-run'> => ({
  id: 'r1',
  doneOn: '2026-02-09',
  worker: 'A. Ward',
  skill: 'machine-soldering',
  begunAtH: undefined,
  assemblies,
  serials: undefined,
  lots: undefined,
  line: undefined,
  ...over,
})
