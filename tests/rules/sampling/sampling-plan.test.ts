import { describe, expect, test } from 'vitest'
import {
  acceptanceUnder,
  operatingCurve,
  outgoingCurve,
  planRisk,
  riskInWords,
} from '@/shared/sampling/plan-risk'
import { outcomeOf, planForLot, planInWords, type SamplingSettings } from '@/shared/sampling/sampling-plan'
import { VARIABLES_LOT_BANDS, variablesLetterFor } from '@/shared/statistics/sampling/variables-letters'
import { nextTighterFraction } from '@/shared/statistics/sampling/limiting-quality-steps'
import { variablesPlan } from '@/shared/statistics/sampling/variables-plan'
import reference from '@/tests/reference/evaluation/single-plans.json'

const settings = (over: Partial<SamplingSettings> = {}): SamplingSettings => ({
  scheme: 'single',
  level: 'S-3',
  limit: '1.0',
  reducedWanted: false,
  zeroAcceptance: { fraction: 0.1, confidence: 0.9 },
  ...over,
})

// MIL-STD-105E tables I, II-A, II-B, II-C, read in transcriptions.
describe('single plans by lot size', () => {
  const rows = reference.rows.flatMap(({ lot, level, aql, ...plans }) =>
    (['normal', 'tightened', 'reduced'] as const).map(
      (severity) => [lot, level, aql, severity, plans[severity]] as const,
    ),
  )
  test.each(rows)('%s pieces, level %s, AQL %s, %s: %j', (lot, level, aql, severity, expected) => {
    const asked = settings({
      level: level as SamplingSettings['level'],
      limit: aql as SamplingSettings['limit'],
    })
    const plan = planForLot(lot, severity, asked)
    const [sample, accept, reject] = expected as [number, number, number]
    expect(plan).toMatchObject({ kind: 'single', accept, reject, sampleSize: Math.min(sample, lot) })
  })
  test('a sample as large as the lot takes all of it', () => {
    expect(planForLot(8, 'normal', settings())).toMatchObject({ sampleSize: 8, everyUnit: true })
    expect(planForLot(1, 'normal', settings())).toMatchObject({ sampleSize: 1, accept: 0, everyUnit: true })
  })
  test('a lot of nothing is refused', () => {
    expect(() => planForLot(0, 'normal', settings())).toThrow(RangeError)
    expect(() => planForLot(Number.NaN, 'normal', settings())).toThrow(RangeError)
  })
})

describe('zero acceptance', () => {
  // Hypergeometric samples at 95 % (computed with scipy): 100 pieces, 5 nonconforming: 45; 500, 25: 56; 1000, 50: 57.
  test.each([
    [100, 45],
    [500, 56],
    [1000, 57],
  ])('finds 5 %% bad in %s pieces by %s', (lot, sample) => {
    const asked = settings({
      scheme: 'zero-acceptance',
      zeroAcceptance: { fraction: 0.05, confidence: 0.95 },
    })
    expect(planForLot(lot, 'normal', asked)).toMatchObject({
      kind: 'zero-acceptance',
      sampleSize: sample,
      reject: 1,
    })
  })
  test('a share of a small lot means at least one piece', () => {
    const asked = settings({ scheme: 'zero-acceptance', zeroAcceptance: { fraction: 0.01, confidence: 0.9 } })
    // 20 pieces, 1 nonconforming, 90 %: 18 (computed with scipy; P(0) = 0.1 exactly).
    expect(planForLot(20, 'normal', asked)).toMatchObject({ sampleSize: 18, caught: 1 })
  })
})

describe('double plans', () => {
  const asked = settings({ scheme: 'double', level: 'II' })
  test('1000 pieces at level II, AQL 1.0: 50 0/3, then 50 3/4 (MIL-STD-105E table III-A, one transcription)', () => {
    expect(planForLot(1000, 'normal', asked)).toMatchObject({
      kind: 'double',
      firstSize: 50,
      firstAccept: 0,
      firstReject: 3,
      secondSize: 50,
      secondAccept: 3,
      secondReject: 4,
    })
  })
  test('where the table has none, the single plan serves', () => {
    expect(planForLot(200, 'normal', settings({ scheme: 'double' })).kind).toBe('single')
  })
  const plan = planForLot(1000, 'normal', asked)
  test.each([
    [49, 0, { decided: undefined, stillToTest: 1 }],
    [50, 0, { decided: 'accepted' }],
    [50, 1, { decided: undefined, stillToTest: 50 }],
    [50, 3, { decided: 'rejected' }],
    [70, 3, { decided: undefined, stillToTest: 30 }],
    [100, 3, { decided: 'accepted' }],
    [60, 4, { decided: 'rejected' }],
  ] as const)('%s tested, %s bad', (tested, nonconforming, expected) => {
    if (plan.kind === 'variables') throw new Error('a double plan was asked for')
    expect(outcomeOf(plan, tested, nonconforming)).toEqual(expected)
  })
})

describe('variables plans', () => {
  const asked = settings({ scheme: 'variables', level: 'II' })
  test('100 pieces at level II, AQL 1.0: letter F, 10 pieces, k 1.72 (ANSI/ASQ Z1.9 table B-1)', () => {
    const plan = planForLot(100, 'normal', asked, { measured: true })
    expect(plan).toMatchObject({
      kind: 'variables',
      letter: 'F',
      sampleSize: 10,
      acceptabilityConstant: 1.72,
    })
    expect(planForLot(100, 'tightened', asked, { measured: true })).toMatchObject({
      acceptabilityConstant: 1.84,
    })
  })
  test('what is not measured is counted', () => {
    expect(planForLot(100, 'normal', asked).kind).toBe('single')
  })
  test('letters rise with the lot and with the level', () => {
    const rank = (letter: string) => letter.charCodeAt(0)
    for (const [index, { letters }] of VARIABLES_LOT_BANDS.entries()) {
      const above = VARIABLES_LOT_BANDS[index - 1]?.letters ?? 'BBBBB'
      for (let column = 0; column < 5; column++) {
        expect(rank(letters[column]!)).toBeGreaterThanOrEqual(rank(above[column]!))
        if (column > 0) expect(rank(letters[column]!)).toBeGreaterThanOrEqual(rank(letters[column - 1]!))
      }
    }
    expect(
      VARIABLES_LOT_BANDS.every(
        ({ lotUpTo }, at) => at === 0 || lotUpTo > VARIABLES_LOT_BANDS[at - 1]!.lotUpTo,
      ),
    ).toBe(true)
  })
  test('the smallest special levels take the letters of S-3', () => {
    expect(variablesLetterFor(1000, 'S-1')).toBe(variablesLetterFor(1000, 'S-3'))
    expect(() => variablesLetterFor(1, 'II')).toThrow(RangeError)
  })
})

describe('the risk of a plan', () => {
  // 13 pieces, none nonconforming: 1 − 0.1^(1/13) = 16.23 %, 1 − 0.95^(1/13) = 0.394 % (computed).
  test('13 pieces on 0', () => {
    const risk = planRisk(planForLot(200, 'normal', settings()))
    expect(risk.oneInTen).toBeCloseTo(0.1623, 4)
    expect(risk.mostlyAccepted).toBeCloseTo(0.003938, 5)
  })
  // MIL-STD-105E table X-J, AQL 1.0: 80 pieces on 2; 1.03 % and 6.52 % (from memory; scipy 1.0298, 6.5160).
  test('80 pieces on 2', () => {
    const risk = planRisk(planForLot(1000, 'normal', settings({ level: 'II' })))
    expect(risk.mostlyAccepted).toBeCloseTo(0.010298, 5)
    expect(risk.oneInTen).toBeCloseTo(0.06516, 5)
  })
  test('is said in plain words', () => {
    expect(riskInWords(planForLot(200, 'normal', settings()))).toBe(
      'A process with 0.394 % nonconforming passes nineteen times in twenty, one with 16.2 % still one time in ten.',
    )
  })
  test.each(['double', 'zero-acceptance', 'variables'] as const)(
    'of a %s plan falls along its curve',
    (scheme) => {
      const plan = planForLot(1000, 'normal', settings({ scheme, level: 'II' }), { measured: true })
      const { mostlyAccepted, oneInTen } = planRisk(plan)
      expect(acceptanceUnder(plan, mostlyAccepted)).toBeCloseTo(0.95, 6)
      expect(acceptanceUnder(plan, oneInTen)).toBeCloseTo(0.1, 6)
      const curve = operatingCurve(plan, [0, 0.01, 0.05, 0.2, 1])
      expect(curve[0]?.acceptance).toBe(1)
      expect(curve[4]?.acceptance).toBe(0)
      for (let at = 1; at < curve.length; at++)
        expect(curve[at]!.acceptance).toBeLessThan(curve[at - 1]!.acceptance)
    },
  )
  // 1000 pieces, 80 on 2, half a per cent bad: 0.0045645 leaves on average (computed with scipy).
  test('outgoing quality under rectifying inspection', () => {
    const plan = planForLot(1000, 'normal', settings({ level: 'II' }))
    expect(outgoingCurve(plan, 1000, [0.005])[0]?.outgoing).toBeCloseTo(0.004564525574, 10)
    const double = planForLot(1000, 'normal', settings({ level: 'II', scheme: 'double' }))
    expect(outgoingCurve(double, 1000, [0])[0]?.outgoing).toBe(0)
    // Something leaves, and less than comes in.
    const [leaving] = outgoingCurve(double, 1000, [0.005])
    expect(leaving?.outgoing).toBeGreaterThan(0)
    expect(leaving?.outgoing).toBeLessThan(0.005)
  })
  test('a count in the gap of a reduced plan passes', () => {
    // Letter G reduced at AQL 1.0: 20 pieces, accept 0, reject 2: one bad still passes.
    const plan = planForLot(200, 'reduced', settings({ level: 'II' }))
    expect(acceptanceUnder(plan, 0.05)).toBeCloseTo(0.95 ** 20 + 20 * 0.05 * 0.95 ** 19, 12)
  })
})

test('plans are said in words', () => {
  expect(planInWords(planForLot(1, 'normal', settings()))).toBe(
    '1 piece, the whole lot, accept on 0, reject on 1 (letter A, normal inspection)',
  )
})

// MIL-STD-105E 4.10.2 (double sampling): the first sample is judged by itself, the second drawn only when it has not decided.
describe('two samples drawn at once', () => {
  const plan = planForLot(1000, 'normal', settings({ scheme: 'double', level: 'II', limit: '2.5' }))
  if (plan.kind !== 'double') throw new Error('a double plan was expected')
  const both = plan.firstSize + plan.secondSize
  test('are accepted by the first where it accepts, whatever the second holds', () => {
    expect(outcomeOf(plan, both, plan.secondReject + 3, plan.firstAccept)).toEqual({ decided: 'accepted' })
  })
  test('are rejected by the first where it rejects', () => {
    expect(outcomeOf(plan, both, plan.firstReject, plan.firstReject)).toEqual({ decided: 'rejected' })
  })
  test('decide together where the first does not', () => {
    const between = plan.firstAccept + 1
    expect(outcomeOf(plan, both, plan.secondAccept, between)).toEqual({ decided: 'accepted' })
    expect(outcomeOf(plan, both, plan.secondReject, between)).toEqual({ decided: 'rejected' })
  })
})

// LTPD 10 is 22 pieces with none failing (MIL-STD-883 method 2003), LTPD 7 is 32 (MIL-M-38510; from memory):
// of a process. Of a lot of 100,000, where the share is nearly that of a process.
describe('zero acceptance', () => {
  const zero = settings({ scheme: 'zero-acceptance' })
  const size = (severity: 'normal' | 'tightened' | 'reduced') => {
    const plan = planForLot(100_000, severity, zero)
    return plan.kind === 'double' ? 0 : plan.sampleSize
  }
  test('tightened asks for more pieces, reduced for no fewer', () => {
    expect(size('normal')).toBe(22)
    expect(size('tightened')).toBe(32)
    expect(size('reduced')).toBe(22)
    expect(planInWords(planForLot(100_000, 'tightened', zero))).toContain('tightened inspection')
  })
  test('below the last step of the table two thirds are asked', () => {
    expect(nextTighterFraction(0.001)).toBeCloseTo(0.001 * (2 / 3), 12)
    expect(nextTighterFraction(0.5)).toBe(0.3)
    expect(() => nextTighterFraction(1)).toThrow(RangeError)
  })
})

test('an unknown severity or level is a RangeError', () => {
  const [severity, level] = ['strict', 'IV'] as unknown as ['normal', 'II']
  expect(() => planForLot(100, severity, settings())).toThrow(RangeError)
  expect(() => planForLot(100, severity, settings({ scheme: 'double' }))).toThrow(RangeError)
  expect(() => planForLot(100, 'normal', settings({ level }))).toThrow(RangeError)
  expect(() => variablesLetterFor(100, level)).toThrow(RangeError)
  expect(() => variablesPlan('F', '1.0', severity)).toThrow(RangeError)
})
