import { commonPractice, fromMemory } from '@/shared/sources/provenance'

const millimetres = (inches: number): number => Number((inches * 25.4).toFixed(4))
const steps = (from: number, to: number, step: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) =>
    Number((from + index * step).toFixed(4)),
  )

/** Number drills from 80 up to 40, inches. */
const NUMBER_DRILLS_IN = [
  0.0135, 0.0145, 0.016, 0.018, 0.02, 0.021, 0.0225, 0.024, 0.025, 0.026, 0.028, 0.0292, 0.031, 0.032, 0.033,
  0.035, 0.036, 0.037, 0.038, 0.039, 0.04, 0.041, 0.042, 0.043, 0.0465, 0.052, 0.055, 0.0595, 0.0635, 0.067,
  0.07, 0.073, 0.076, 0.0785, 0.081, 0.082, 0.086, 0.089, 0.0935, 0.096, 0.098,
]

/** Drill sizes a fabricator holds, ascending, mm. */
export const DRILL_SERIES = {
  'metric-0.05': {
    label: 'Metric, every 0.05 mm',
    sizesMm: steps(0.2, 6.5, 0.05),
    source: commonPractice('Metric drills of 0.2 to 6.5 mm in steps of 0.05 mm'),
  },
  'metric-0.1': {
    label: 'Metric, every 0.1 mm',
    sizesMm: steps(0.2, 6.5, 0.1),
    source: commonPractice('Metric drills of 0.2 to 6.5 mm in steps of 0.1 mm'),
  },
  number: {
    label: 'Number drills 80 to 40',
    sizesMm: NUMBER_DRILLS_IN.map(millimetres),
    source: fromMemory('ASME B94.11M, number drills 80 to 40'),
  },
} as const
export type DrillSeries = keyof typeof DRILL_SERIES
