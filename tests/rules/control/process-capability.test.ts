import { describe, expect, test } from 'vitest'
import { capabilityLeast } from '@/shared/plan/limits/control-charts'
import { bathTemperatureTarget } from '@/shared/plan/parameters/control-bath'
import { capabilityAsked, chartPhases } from '@/shared/plan/parameters/control-charts'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { capabilityOf } from '@/shared/charts/capability-of-log'
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
      swinging(1),
      { least: { value: 245, document: '' }, most: { value: 255, document: '' }, unit: '°C' },
      0.95,
    )
    expect(found?.study.shortTerm.sigma.sigma).toBeCloseTo(2 / 1.1283791670955126, 9)
    expect(found?.study.shortTerm.cpk).toBeCloseTo(5 / ((3 * 2) / 1.1283791670955126), 9)
    // NIST 6.1.6 one-sided bound: Cpk − z √(1/(9n) + Cpk²/(2ν)); below the estimate.
    expect(found?.study.shortTerm.cpkLowerBound).toBeLessThan(found!.study.shortTerm.cpk)
  })
  test('ample room meets, room by the estimate alone is marginal, none fails', () => {
    expect(judged(swinging(0.5)).verdict).toBe('meets')
    expect(judged(swinging(0.67)).verdict).toBe('marginal')
    expect(judged(swinging(1.5)).verdict).toBe('fails')
  })
  test('an unstable log says that its capability promises nothing', () => {
    const finding = judged([...swinging(0.5), 254])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toMatch(/unstable \(1 points beyond/)
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
    expect(judged(swinging(0.5), { requirements: [requirement(capabilityLeast, 2)] }).verdict).toBe('fails')
  })
  test('not asked, nothing is judged', () => {
    expect(judged(swinging(3), { values: VALUES.slice(0, 2) }).verdict).toBe('not applicable')
  })
})
