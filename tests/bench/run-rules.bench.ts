/*
 * How long all run rules of both sources take over the points of a long log,
 * against one bare pass over the same points that squares and adds them.
 * Run: npx tsx tests/bench/run-rules.bench.ts
 */
import { individualsChart } from '@/shared/statistics/charts/individuals'
import { detectSignals } from '@/shared/statistics/run-rules/detect'
import { NELSON_1984 } from '@/shared/statistics/run-rules/nelson'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'

const POINTS = 50_000
const ROUNDS = 20
const MAX_RATIO_PER_RULE = 8
const RULES = [...WESTERN_ELECTRIC_1956, ...NELSON_1984]

/** Drift, waves and noise of a fixed sequence, so that every rule has work to do. */
function readings(): number[] {
  let state = 1
  return Array.from({ length: POINTS }, (_, index) => {
    state = (state * 1103515245 + 12345) % 2147483648
    return Math.sin(index / 500) + (state / 2147483648 - 0.5) * 4
  })
}

function fastest(work: () => number): number {
  const times = Array.from({ length: ROUNDS }, () => {
    const start = performance.now()
    if (work() === 0) throw new Error('There was nothing to do.')
    return performance.now() - start
  })
  return Math.min(...times)
}

const values = readings()
const chart = individualsChart(values, { kind: 'frozen', setBy: 'bench', centre: 0, processSigma: 1 })
const rulesMs = fastest(() => detectSignals(chart, RULES).length)
const bareMs = fastest(() => values.reduce((sum, value) => sum + value * value, 0))
const ratio = rulesMs / bareMs / RULES.length

console.log(
  `${RULES.length} run rules over ${POINTS} points: ${rulesMs.toFixed(1)} ms, a bare pass ${bareMs.toFixed(2)} ms, ratio a rule ${ratio.toFixed(1)} (at most ${MAX_RATIO_PER_RULE})`,
)
if (ratio > MAX_RATIO_PER_RULE) process.exitCode = 1
