import { describe, expect, test } from 'vitest'
import { aboveLiquidusLeadFreeMax } from '@/shared/plan/limits/control-profile'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderAlloy } from '@/shared/plan/parameters/solder'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { profileSummary } from '@/shared/profiles/profile-summary'
import { thermalProfileRule } from '@/shared/rules/control/thermal-profile'
import { findingOf, requirement, set, type FactsInput } from '../facts-builder'
import { INSTRUMENT, logOf, worked } from '../log-builder'

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
const pass = (
  corners: readonly (readonly [number, number])[],
  lags: readonly number[] = [0, 0, 0],
  over = {},
) =>
  logOf(
    'thermal-profile',
    Array.from({ length: corners[corners.length - 1]![0] + 1 }, (_, second) => ({
      at: new Date(Date.parse('2026-02-02T08:00:00Z') + second * 1000).toISOString(),
      ...Object.fromEntries(lags.map((lag, index) => [`couple${index + 1}C`, along(corners, second) - lag])),
    })),
    over,
  )
const VALUES = [set(alloyFamily, 'lead-free'), set(solderingProcess, 'reflow'), set(solderAlloy, 'sac305')]
/** Reflowed on the day of the pass. */
const RUNS = worked({ skill: 'reflow-soldering' })
const judged = (logs: ReturnType<typeof logOf>[], over: FactsInput = {}) =>
  findingOf(thermalProfileRule, { values: VALUES, logs, instruments: [INSTRUMENT], records: RUNS, ...over })

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
    const finding = judged([pass(GOOD, [0, 6, 0])])
    expect(finding.parts?.find(({ subject }) => subject.endsWith('peak'))).toMatchObject({ verdict: 'fails' })
    const spread = judged([pass(GOOD, [-2, 12, 0])]).parts?.find(({ subject }) =>
      subject.includes('difference'),
    )
    expect(spread).toMatchObject({
      verdict: 'fails',
      found: '14 K between the hottest and the coolest place.',
    })
  })
  test('a customer’s shorter time rules', () => {
    expect(judged([pass(GOOD)], { requirements: [requirement(aboveLiquidusLeadFreeMax, 55)] }).verdict).toBe(
      'fails',
    )
  })
  test('of two passes on one machine the newest is judged', () => {
    const later = pass(GOOD, [0, 0, 0], { code: 'P-2' })
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
    const records = worked({ skill: 'reflow-soldering', doneOn: '2026-02-03' })
    expect(judged([pass(QUICK), shifted], { records }).verdict).toBe('meets')
    expect(judged([shifted, pass(QUICK)], { records }).verdict).toBe('meets')
    // What was soldered the day before was soldered on the bad profile.
    expect(judged([pass(QUICK), shifted]).verdict).toBe('fails')
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
  // IPC/JEDEC J-STD-020, classification profile (from memory): cooling by 6 K/s at most.
  test('cooling faster than 6 K/s fails', () => {
    const quenched = [...GOOD.slice(0, 4), [290, 100]] as const
    const finding = judged([pass(quenched)])
    expect(finding.parts?.find(({ subject }) => subject.endsWith('steepest fall'))).toMatchObject({
      verdict: 'fails',
      found: '7 K/s at thermocouple 1.',
    })
  })
  test('a trace that ends at its peak tells no cooling', () => {
    const finding = judged([pass(GOOD.slice(0, 4))])
    expect(finding.parts?.find(({ subject }) => subject.endsWith('steepest fall'))).toMatchObject({
      verdict: 'undetermined',
    })
  })
  // Common practice, no published source: three thermocouples at least.
  test('two thermocouples are one too few, and that is said', () => {
    const finding = judged([pass(GOOD, [0, 0])])
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing?.join()).toContain('2 of the 3 that are asked: 1 more')
  })
  test('a run of reflow needs a profile before it, a month old at most', () => {
    const on = (doneOn: string) =>
      judged([pass(GOOD)], { records: worked({ skill: 'reflow-soldering', doneOn }) }).verdict
    expect(on('2026-03-04')).toBe('meets')
    expect(on('2026-03-05')).toBe('undetermined')
    expect(on('2026-02-01')).toBe('undetermined')
    expect(judged([pass(GOOD)], { records: {} }).verdict).toBe('undetermined')
  })
  test('a profile by an unnamed instrument proves nothing', () => {
    expect(judged([pass(GOOD, [0, 0, 0], { instrumentId: null })]).verdict).toBe('undetermined')
  })
})

describe('an alloy that melts unlike its family', () => {
  // Data sheets of tin-bismuth paste (melting at 138 °C): peak 160 to 180 °C, 60 to 90 s above liquidus.
  const BISMUTH = [...VALUES.slice(0, 2), set(solderAlloy, 'sn42bi58')]
  // Up to 170 °C, then down: 40 s + 32 s above 138 °C.
  const cool = (peakC: number) =>
    [
      [0, 25],
      [100, 110],
      [220, 130],
      [230, 138],
      [270, peakC],
      [302, 138],
      [340, 100],
    ] as const
  test('tin-bismuth peaks at 160 to 180 °C, not at 235', () => {
    const verdict = (peakC: number) => judged([pass(cool(peakC))], { values: BISMUTH }).verdict
    expect(verdict(170)).toBe('meets')
    expect(verdict(159)).toBe('fails')
    expect(verdict(181)).toBe('fails')
    expect(judged([pass(GOOD)], { values: BISMUTH }).verdict).toBe('fails')
  })
  // Sn50Pb50 is all molten at 212 °C only: a peak of 210 °C, inside the window of Sn63Pb37, would leave it pasty.
  test('half tin, half lead peaks above its liquidus of 212 °C', () => {
    const values = [
      set(alloyFamily, 'tin-lead'),
      set(solderingProcess, 'reflow'),
      set(solderAlloy, 'sn50pb50'),
    ]
    expect(judged([pass(GOOD)], { values }).limit).toContain('At least 234 °C')
    const usual = [...values.slice(0, 2), set(solderAlloy, 'sn63pb37')]
    expect(judged([pass(GOOD)], { values: usual }).limit).toContain('At least 205 °C')
  })
})
