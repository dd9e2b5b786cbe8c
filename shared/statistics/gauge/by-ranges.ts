import { chartConstants } from '@/shared/statistics/charts/constants'
import { mean, range } from '@/shared/statistics/sample-moments'
import { gaugeSize } from './study'
import type { GaugeSpread, GaugeStudy } from './study'

/**
 * Gauge study by averages and ranges. Ranges become standard deviations by
 * K1 = 1/d2 (many ranges of the trials) and by K2, K3 = 1/d2* (one range, of
 * the appraisers' or of the parts' means), d2* = √(d2² + d3²). 2 to 25 parts,
 * appraisers and trials. What appraisers do differently from part to part is
 * not seen. Source: AIAG, Measurement Systems Analysis, 4th edition, chapter III.
 */
export function gaugeSpreadByRanges(study: GaugeStudy): GaugeSpread {
  const { parts, appraisers, trials } = gaugeSize(study)
  const cellRanges = study.flatMap((part) => part.map(range))
  const partMeans = study.map((part) => mean(part.flat()))
  const appraiserMeans = Array.from({ length: appraisers }, (_, appraiser) =>
    mean(study.flatMap((part) => part[appraiser]!)),
  )
  const repeatability = mean(cellRanges) / chartConstants(trials).d2
  const between = range(appraiserMeans) / singleRangeFactor(appraisers)
  const reproducibility = Math.sqrt(Math.max(0, between ** 2 - repeatability ** 2 / (parts * trials)))
  const gauge = Math.hypot(repeatability, reproducibility)
  const partSpread = range(partMeans) / singleRangeFactor(parts)
  return {
    repeatability,
    reproducibility,
    gauge,
    parts: partSpread,
    total: Math.hypot(gauge, partSpread),
  }
}

/** d2* for one range of n readings: the root mean square of the range ÷ σ. */
export function singleRangeFactor(n: number): number {
  const { d2, d3 } = chartConstants(n)
  return Math.hypot(d2, d3)
}
