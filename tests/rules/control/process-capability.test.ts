import { describe, expect, test } from 'vitest'
import { capabilityMin } from '@/shared/plan/limits/control-charts'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import { capabilityAsked, chartPhases, chartRules } from '@/shared/plan/parameters/control-charts'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { capabilityOf, readingsToShow } from '@/shared/charts/capability-of-log'
import { specifiedCharting } from '@/shared/charts/log-chart'
import { processCapabilityRule } from '@/shared/rules/control/process-capability'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { logOf } from '../log-builder'

const VALUES = [set(alloyFamily, 'tin-lead'), set(bathTemperatureTarget, 250), set(capabilityAsked, true)]
const log = (values: readonly number[]) =>
  logOf(
    'bath-temperature',
    values.map((bathC, index) => ({
      at: new Date(Date.UTC(2026, 0, 5) + index * 3_600_000).toISOString(),
      bathC,
    })),
  )
const judged = (values: readonly number[], over: FactsInput = {}) =>
  findingOf(processCapabilityRule, { values: VALUES, logs: [log(values)], ...over })
/** Up and down by turns about 250 °C: the moving range is twice the swing. */
const swinging = (swing: number, count = 60) =>
  Array.from({ length: count }, (_, index) => 250 + (index % 2 === 0 ? swing : -swing))

describe('capability of a log', () => {
  // NIST/SEMATECH e-Handbook 6.1.6: (limit − mean) / 3σ to the nearer limit; σ from the moving range ÷ 1.128 (6.3.2.2).
  test('is the room to the nearer limit in three sigma', () => {
    const found = capabilityOf(
      { instants: swinging(1).map((_, index) => index), values: swinging(1) },
      { min: { value: 245, document: '' }, max: { value: 255, document: '' }, unit: '°C' },
      specifiedCharting(log([]), undefined),
      0.95,
    )
    expect(found?.study.shortTerm.sigma.sigma).toBeCloseTo(2 / 1.1283791670955126, 9)
    expect(found?.study.shortTerm.cpk).toBeCloseTo(5 / ((3 * 2) / 1.1283791670955126), 9)
    // NIST 6.1.6 one-sided bound: Cpk − z √(1/(9n) + Cpk²/(2ν)); below the estimate.
    expect(found?.study.shortTerm.cpkLowerBound).toBeLessThan(found!.study.shortTerm.cpk)
  })
  test('ample room meets, room by the estimate alone is not shown yet, none fails', () => {
    expect(judged(swinging(0.5)).verdict).toBe('meets')
    expect(judged(swinging(0.67)).verdict).toBe('undetermined')
    expect(judged(swinging(1.5)).verdict).toBe('fails')
  })
  test('an unstable log says that its capability promises nothing', () => {
    const finding = judged([...swinging(0.5), 254])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toMatch(/unstable \(1 signal by western-electric-1/)
  })
  // The bound's distance falls with the root of the number: what is said to be needed is enough, and little less is not.
  test('little evidence says how many readings would show it', () => {
    const finding = judged(swinging(0.67))
    const needed = Number(/about (\d+) readings in all/.exec(finding.found)?.[1])
    expect(judged(swinging(0.67, Math.ceil(1.05 * needed))).verdict).toBe('meets')
    expect(judged(swinging(0.67, Math.floor(0.85 * needed))).verdict).toBe('undetermined')
    expect(readingsToShow({ index: 1.5, lowerBound: 1.25, readings: 50 }, 1.375)).toBe(200)
    expect(readingsToShow({ index: 1.2, lowerBound: 1, readings: 50 }, 1.3)).toBe(Infinity)
  })
  // NIST/SEMATECH e-Handbook 6.1.6: Ppk takes the spread of all readings, which a slow wave widens and the moving range does not see.
  test('a slow wander is held against the long-term index', () => {
    const a = 0.55
    const wandering = Array.from(
      { length: 120 },
      (_, index) => 250 + (index % 2 === 0 ? a : -a) + 3.5 * a * Math.sin((index * Math.PI) / 30),
    )
    const finding = judged(wandering)
    expect(finding.verdict).toBe('fails')
    expect(finding.margin?.found).toBeLessThan(1.33)
    expect(Number(/Cpk ([\d.]+)/.exec(finding.found)?.[1])).toBeGreaterThan(1.5)
  })
  test('steady is what none of the chosen run rules signals on', () => {
    // Fourteen readings up and down by turns: test 4 of Nelson (1984), and nothing to a rule on limits.
    const finding = judged(swinging(0.5), { values: [...VALUES, set(chartRules, 'nelson')] })
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toMatch(/unstable/)
  })
  test('too few readings, or none that differ, are no capability', () => {
    expect(judged(swinging(0.5, 19)).verdict).toBe('undetermined')
    expect(judged(Array.from({ length: 40 }, () => 250)).verdict).toBe('undetermined')
    expect(judged([]).verdict).toBe('undetermined')
  })
  test('readings from before a lasting change say nothing of the process as it runs now', () => {
    const values = [...swinging(3, 40), 275, ...swinging(0.5, 40)]
    expect(judged(values).verdict).toBe('undetermined')
    // Hourly readings from 5 January: the upset falls on the 6th.
    const phase = (startsOn: string) => set(chartPhases, [{ log: 'l-1', startsOn, name: 'new pump' }])
    const fresh = judged(values, { values: [...VALUES, phase('2026-01-07')] })
    expect(fresh.verdict).toBe('meets')
    expect(fresh.found).toContain('33 readings since “new pump”')
    const few = judged(values, { values: [...VALUES, phase('2026-01-08')] })
    expect(few.verdict).toBe('undetermined')
    expect(few.found).toContain('9 readings since “new pump”, of the 20')
  })
  test('a customer’s 2.0 rules', () => {
    expect(judged(swinging(0.5), { requirements: [requirement(capabilityMin, 2)] }).verdict).toBe('fails')
  })
  test('not asked, nothing is judged', () => {
    expect(judged(swinging(3), { values: VALUES.slice(0, 2) }).verdict).toBe('not applicable')
  })
})
