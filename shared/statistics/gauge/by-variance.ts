import { requireProbability } from '@/shared/statistics/argument-checks'
import { fSf } from '@/shared/statistics/distributions/fisher-f'
import { gaugeSize } from './study'
import type { GaugeSpread, GaugeStudy } from './study'
import { varianceTable } from './variance-table'
import type { VarianceTable } from './variance-table'

/** Whether the interaction of parts and appraisers counts as its own, or is pooled with the trials. */
export type InteractionBranch = 'pooled' | 'with-interaction'

export type GaugeSpreadByVariance = GaugeSpread & {
  branch: InteractionBranch
  /** Chance of so strong an interaction if there is none. */
  interactionPValue: number
  /** The part of reproducibility that differs from part to part; 0 when pooled. */
  interaction: number
  table: VarianceTable
}

/**
 * The p value above which the interaction is pooled with the trials. From
 * memory of AIAG, Measurement Systems Analysis; other texts use 0.05, which
 * pools more often and can hide an interaction.
 */
export const POOL_ABOVE_P_VALUE = 0.25

/**
 * Gauge study by analysis of variance, random parts and appraisers. Components
 * that come out negative count as zero. `branch` forces one computation; left
 * out, the interaction's own test chooses, and the result says which was used.
 * Source: AIAG, Measurement Systems Analysis, 4th edition, chapter III.
 */
export function gaugeSpreadByVariance(
  study: GaugeStudy,
  choice: { branch?: InteractionBranch; poolAbovePValue?: number } = {},
): GaugeSpreadByVariance {
  const size = gaugeSize(study)
  const { poolAbovePValue = POOL_ABOVE_P_VALUE } = choice
  requireProbability(poolAbovePValue, 'p value above which to pool')
  const table = varianceTable(study)
  const interactionPValue = pValue(table)
  const branch = choice.branch ?? (interactionPValue > poolAbovePValue ? 'pooled' : 'with-interaction')
  const { error, against } = meanSquares(table, branch)
  const { parts, appraisers, trials } = size
  const component = (excess: number, readings: number): number => Math.max(0, excess) / readings
  const interaction = branch === 'pooled' ? 0 : component(against - error, trials)
  const appraiser = component(table.appraisers.meanSquare - against, parts * trials)
  const part = component(table.parts.meanSquare - against, appraisers * trials)
  const gauge = error + appraiser + interaction
  return {
    branch,
    interactionPValue,
    table,
    repeatability: Math.sqrt(error),
    reproducibility: Math.sqrt(appraiser + interaction),
    interaction: Math.sqrt(interaction),
    gauge: Math.sqrt(gauge),
    parts: Math.sqrt(part),
    total: Math.sqrt(gauge + part),
  }
}

/** The trials' mean square, and the one that parts and appraisers are held against. */
function meanSquares(
  { interaction, trials }: VarianceTable,
  branch: InteractionBranch,
): { error: number; against: number } {
  if (branch === 'with-interaction') return { error: trials.meanSquare, against: interaction.meanSquare }
  const pooled =
    (interaction.sumOfSquares + trials.sumOfSquares) /
    (interaction.degreesOfFreedom + trials.degreesOfFreedom)
  return { error: pooled, against: pooled }
}

/** A gauge that repeats exactly shows any interaction at all as certain. */
function pValue({ interaction, trials }: VarianceTable): number {
  if (trials.meanSquare === 0) return interaction.meanSquare > 0 ? 0 : 1
  return fSf(
    interaction.meanSquare / trials.meanSquare,
    interaction.degreesOfFreedom,
    trials.degreesOfFreedom,
  )
}
