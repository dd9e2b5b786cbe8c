import { describe, expect, test } from 'vitest'
import {
  falseSignalsExpected,
  RUN_RULE_SETS,
  USUAL_RUN_RULES,
  type RunRuleSet,
} from '@/shared/charts/run-rule-sets'
import { individualsChart } from '@/shared/statistics/charts/individuals'
import { normalSf } from '@/shared/statistics/distributions/normal'
import { detectSignals } from '@/shared/statistics/run-rules/detect'

/** Normal readings of a process that does not change, always the same ones: Park and Miller's generator. */
function steadyFrom(start: number): () => number {
  let state = start
  const uniform = () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
}
const steady = steadyFrom(20_261)
const signalsOf = (set: RunRuleSet, readings: number) =>
  detectSignals(
    individualsChart(Array.from({ length: readings }, steady), {
      kind: 'frozen',
      setBy: 'test',
      centre: 0,
      processSigma: 1,
    }),
    RUN_RULE_SETS[set].asked,
  )

describe('false signals of a steady process', () => {
  test('beyond three sigma: twice the normal tail, 2.6998 of a thousand', () => {
    expect(RUN_RULE_SETS.limits.falsePerThousand).toBeCloseTo(2000 * normalSf(3), 1)
  })
  test.each(['limits', 'zones', 'nelson'] as const)('%s: as many as a long simulation gives', (set) => {
    const readings = 400_000
    const expected = falseSignalsExpected(set, readings)
    expect(Math.abs(signalsOf(set, readings).length / expected - 1)).toBeLessThan(0.06)
  })
  // C. W. Champ and W. H. Woodall, Technometrics 29 (1987) 393: the four zone rules first signal after 91.75 readings on average.
  test('the zone rules first signal after about 92 readings', () => {
    const runs = Array.from({ length: 1500 }, () => (signalsOf('zones', 1000)[0]?.soundedAt ?? 1000) + 1)
    const mean = runs.reduce((sum, run) => sum + run, 0) / runs.length
    expect(mean).toBeGreaterThan(91.75 - 8)
    expect(mean).toBeLessThan(91.75 + 8)
  })
  test('the usual set is the one with the fewest', () => {
    const sets = Object.entries(RUN_RULE_SETS)
    const fewest = sets.reduce((one, other) =>
      other[1].falsePerThousand < one[1].falsePerThousand ? other : one,
    )
    expect(USUAL_RUN_RULES).toBe(fewest[0])
  })
})
