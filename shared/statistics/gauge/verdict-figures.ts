import { requirePositive } from '@/shared/statistics/argument-checks'
import type { GaugeSpread } from './study'

/** The figures by which a gauge is judged. */
export type GaugeFigures = {
  /** Gauge spread as a share of the total spread, % (%GRR). */
  gaugeShareOfTotalPct: number
  /** Gauge variance as a share of the total variance, %. */
  gaugeShareOfVariancePct: number
  /** Six gauge sigmas as a share of the tolerance, %; absent without a tolerance. */
  gaugeShareOfTolerancePct?: number
  /** Groups of parts that the gauge can tell apart, 1.41 × parts ÷ gauge, cut to a whole number (ndc). */
  distinctCategories: number
  distinctCategoriesUncut: number
}

/**
 * Source: AIAG, Measurement Systems Analysis, 4th edition, chapter III; it
 * writes 1.41, not √2, which can cost a category near a whole number.
 * A gauge without any spread tells apart without bound: categories Infinity.
 */
export function gaugeFigures({ gauge, parts, total }: GaugeSpread, tolerance?: number): GaugeFigures {
  requirePositive(total, 'total spread of the study')
  if (tolerance !== undefined) requirePositive(tolerance, 'tolerance')
  const categories = (1.41 * parts) / gauge
  return {
    gaugeShareOfTotalPct: (100 * gauge) / total,
    gaugeShareOfVariancePct: 100 * (gauge / total) ** 2,
    gaugeShareOfTolerancePct: tolerance === undefined ? undefined : (100 * 6 * gauge) / tolerance,
    distinctCategories: Math.floor(categories),
    distinctCategoriesUncut: categories,
  }
}
