import { describe, expect, test } from 'vitest'
import { aboveLiquidusLeadFreeMost } from '@/shared/plan/limits/control-profile'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { profileSummary } from '@/shared/profiles/profile-summary'
import { thermalProfileRule } from '@/shared/rules/control/thermal-profile'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { INSTRUMENT, logOf } from '../log-builder'

/** Straight lines through corners of seconds and °C, sampled each second: every term can be read off with a pencil. */
const along = (corners: readonly (readonly [number, number])[], timeS: number): number => {
  const next = Math.max(
    1,
    corners.findIndex(([at]) => at >= timeS),
  )
  const [t1, c1] = corners[next]!
  const [t0, c0] = corners[next - 1]!
  return c0 + ((c1 - c0) * (timeS - t0)) / (t1 - t0)
}
// 25 → 150 °C in 100 s, soak to 200 °C in 90 s, 240 °C 40 s later, down to 100 °C in 70 s.
// Above 220 °C: 20 s up at 1 K/s, and 20 K down at 2 K/s, 10 s: 30 s. Too short for 50 to 70 s.
const QUICK = [
  [0, 25],
  [100, 150],
  [190, 200],
  [230, 240],
  [300, 100],
] as const
// The same with the peak reached at 0.5 K/s and left at 1 K/s: 40 s + 20 s = 60 s above 220 °C.
const GOOD = [
  [0, 25],
  [100, 150],
  [190, 200],
  [270, 240],
  [410, 100],
] as const
const pass = (corners: readonly (readonly [number, number])[], lags: readonly number[] = [0], over = {}) =>
  logOf(
    'thermal-profile',
    Array.from({ length: corners[corners.length - 1]![0] + 1 }, (_, second) => ({
      at: new Date(Date.parse('2026-02-02T08:00:00Z') + second * 1000).toISOString(),
      ...Object.fromEntries(lags.map((lag, index) => [`couple${index + 1}C`, along(corners, second) - lag])),
    })),
    over,
  )
const VALUES = [set(alloyFamily, 'lead-free'), set(solderingProcess, 'reflow'), set(solderAlloy, 'sac305')]
const judged = (logs: ReturnType<typeof logOf>[], over: FactsInput = {}) =>
  findingOf(thermalProfileRule, { values: VALUES, logs, instruments: [INSTRUMENT], ...over })

describe('a measured pass', () => {
  test('summed up: peak, soak, time above 220 °C, rise', () => {
    const [couple] = profileSummary(pass(GOOD), 220)!.couples
    expect(couple).toMatchObject({ peakC: 240, peakAtS: 270 })
    expect(couple?.soakS).toBeCloseTo(90, 6)
    expect(couple?.timeAboveLiquidusS).toBeCloseTo(60, 6)
    expect(couple?.steepestRiseKPerS).toBeCloseTo(1.25, 6)
  })
  // Reflow window of Sn96.5Ag3Cu0.5 as published by a component maker: 50 to 70 s above liquidus, peak 235 to 245 °C.
  test('60 s above liquidus at a peak of 240 °C meets; 30 s do not', () => {
    expect(judged([pass(GOOD)]).verdict).toBe('meets')
    const quick = judged([pass(QUICK)])
    expect(quick.verdict).toBe('fails')
    expect(quick.found).toMatch(/time above liquidus: 30 s/)
  })
  test('the coolest place decides the peak, and the difference is judged', () => {
    const finding = judged([pass(GOOD, [0, 6])])
    expect(finding.parts?.find(({ subject }) => subject.endsWith('peak'))).toMatchObject({ verdict: 'fails' })
    const spread = judged([pass(GOOD, [-2, 12])]).parts?.find(({ subject }) => subject.includes('difference'))
    expect(spread).toMatchObject({
      verdict: 'fails',
      found: '14 K between the hottest and the coolest place.',
    })
  })
  test('a customer’s shorter time rules', () => {
    expect(judged([pass(GOOD)], { requirements: [requirement(aboveLiquidusLeadFreeMost, 55)] }).verdict).toBe(
      'fails',
    )
  })
  test('of two passes on one machine the newest is judged', () => {
    const later = pass(GOOD, [0], { code: 'P-2' })
    const shifted = {
      ...later,
      readings: {
        ...later.readings,
        columns: {
          ...later.readings.columns,
          at: later.readings.columns['at']!.map((at) => (at as number) + 86_400_000),
        },
      },
    }
    expect(judged([pass(QUICK), shifted]).verdict).toBe('meets')
    expect(judged([shifted, pass(QUICK)]).verdict).toBe('meets')
  })
  test('a reader out of calibration proves nothing', () => {
    expect(judged([pass(GOOD)], { instruments: [{ ...INSTRUMENT, dueOn: '2026-02-01' }] }).verdict).toBe(
      'undetermined',
    )
  })
  test('reflow without a profile is undetermined; hand soldering asks for none', () => {
    expect(judged([]).verdict).toBe('undetermined')
    expect(
      findingOf(thermalProfileRule, { values: [set(alloyFamily, 'tin-lead'), set(solderingProcess, 'hand')] })
        .verdict,
    ).toBe('not applicable')
  })
})
