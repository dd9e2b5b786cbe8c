import { mean, sumOfSquaredDeviations } from '@/shared/statistics/sample-moments'
import { gaugeSize } from './study'
import type { GaugeStudy } from './study'

export type VarianceLine = { degreesOfFreedom: number; sumOfSquares: number; meanSquare: number }

/** Analysis of variance of a crossed study: parts × appraisers, with trials in each cell. */
export type VarianceTable = {
  parts: VarianceLine
  appraisers: VarianceLine
  interaction: VarianceLine
  trials: VarianceLine
}

/** Source: two-way crossed analysis of variance, as in NIST/SEMATECH e-Handbook 3.2.3.2 (section from memory). */
export function varianceTable(study: GaugeStudy): VarianceTable {
  const { parts, appraisers, trials } = gaugeSize(study)
  const cells = study.flatMap((part) => part.map(mean))
  const partMeans = study.map((part) => mean(part.flat()))
  const appraiserMeans = Array.from({ length: appraisers }, (_, appraiser) =>
    mean(study.flatMap((part) => part[appraiser]!)),
  )
  const betweenCells = trials * sumOfSquaredDeviations(cells)
  const betweenParts = appraisers * trials * sumOfSquaredDeviations(partMeans)
  const betweenAppraisers = parts * trials * sumOfSquaredDeviations(appraiserMeans)
  const withinCells = study.flat().reduce((sum, cell) => sum + sumOfSquaredDeviations(cell), 0)
  return {
    parts: line(betweenParts, parts - 1),
    appraisers: line(betweenAppraisers, appraisers - 1),
    interaction: line(
      Math.max(0, betweenCells - betweenParts - betweenAppraisers),
      (parts - 1) * (appraisers - 1),
    ),
    trials: line(withinCells, parts * appraisers * (trials - 1)),
  }
}

const line = (sumOfSquares: number, degreesOfFreedom: number): VarianceLine => ({
  sumOfSquares,
  degreesOfFreedom,
  meanSquare: sumOfSquares / degreesOfFreedom,
})
