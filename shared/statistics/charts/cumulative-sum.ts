import { requireNotNegative, requirePositive } from '@/shared/statistics/argument-checks'
import { requireFinite, requireReadings } from '@/shared/statistics/reading-checks'

export type CumulativeSumDesign = {
  /** The level to hold, in the unit of the readings. */
  target: number
  /** Slack: half the shift to be found, in the unit of the readings. */
  allowance: number
  /** Sum at which the chart signals, in the unit of the readings. */
  decisionInterval: number
}

export type CumulativeSumSignal = {
  side: 'high' | 'low'
  /** First point after the sum last stood at zero: the likely start of the shift. */
  startedAt: number
  /** First point whose sum passes the decision interval. */
  soundedAt: number
  /** Last point of this excursion above the decision interval. */
  lastAt: number
  /** Level of the process since the start, estimated where the signal sounded. */
  estimatedLevel: number
}

export type CumulativeSumChart = CumulativeSumDesign & {
  kind: 'cumulative-sum'
  high: readonly number[]
  low: readonly number[]
  signals: readonly CumulativeSumSignal[]
}

/**
 * The usual design by standard deviations: allowance half the shift to be
 * found (k = ½ for one sigma), decision interval 4 or 5 sigma.
 * Source: NIST/SEMATECH e-Handbook 6.3.2.3; the multiples from memory.
 */
export const designBySigma = (
  target: number,
  processSigma: number,
  { shiftSigmas = 1, intervalSigmas = 5 } = {},
): CumulativeSumDesign => ({
  target,
  allowance: (shiftSigmas / 2) * processSigma,
  decisionInterval: intervalSigmas * processSigma,
})

/**
 * Tabular cumulative-sum chart, both sides, started at zero; it is not reset
 * after a signal. Source: NIST/SEMATECH e-Handbook 6.3.2.3.
 */
export function cumulativeSumChart(
  values: readonly number[],
  design: CumulativeSumDesign,
): CumulativeSumChart {
  requireReadings(values, 'readings')
  requireFinite(design.target, 'target')
  requireNotNegative(design.allowance, 'allowance')
  requirePositive(design.decisionInterval, 'decision interval')
  const high = sums(values.map((value) => value - design.target - design.allowance))
  const low = sums(values.map((value) => design.target - design.allowance - value))
  const signals = [...signalsOf(high, 'high', design), ...signalsOf(low, 'low', design)]
  return {
    kind: 'cumulative-sum',
    ...design,
    high,
    low,
    signals: signals.sort((one, other) => one.soundedAt - other.soundedAt),
  }
}

function sums(excesses: readonly number[]): number[] {
  let sum = 0
  return excesses.map((excess) => (sum = Math.max(0, sum + excess)))
}

function signalsOf(
  series: readonly number[],
  side: 'high' | 'low',
  { target, allowance, decisionInterval }: CumulativeSumDesign,
): CumulativeSumSignal[] {
  const signals: CumulativeSumSignal[] = []
  const sign = side === 'high' ? 1 : -1
  let startedAt = 0
  let open: CumulativeSumSignal | undefined
  series.forEach((sum, index) => {
    if (sum === 0) startedAt = index + 1
    if (!(sum > decisionInterval)) {
      open = undefined
      return
    }
    if (open) {
      open.lastAt = index
      return
    }
    const estimatedLevel = target + sign * (allowance + sum / (index - startedAt + 1))
    open = { side, startedAt, soundedAt: index, lastAt: index, estimatedLevel }
    signals.push(open)
  })
  return signals
}
