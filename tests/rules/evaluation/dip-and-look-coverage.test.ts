import { describe, expect, test } from 'vitest'
import { lotsNeeded } from '@/shared/plan/parameters/evaluation-lots'
import { acceptableQualityLevel, inspectionLevel } from '@/shared/plan/parameters/evaluation-sampling'
import { testConditions } from '@/shared/plan/parameters/evaluation-test-conditions'
import { dipAndLookCoverage } from '@/shared/rules/evaluation/dip-and-look-coverage'
import { dipAndLookTally } from '@/shared/lot-tests/specimen-tally'
import { findingOf, set } from '../facts-builder'
import { boardConditions, lot, needed, readingsOf, stated, testOf, timer } from '../lots-builder'

// MIL-STD-883 method 2003 (published, secondary copy): at least 95 % covered; pinholes, voids,
// porosity, non-wetting and dewetting together at most 5 %.
const row = (over: Readonly<Record<string, number | string | null>> = {}) => ({
  specimen: 'p1',
  termination: '1',
  coveragePct: 99,
  nonWettingPct: 0,
  dewettingPct: 0,
  pinholesPct: 0,
  ...over,
})
const tally = (...rows: ReturnType<typeof row>[]) => dipAndLookTally(readingsOf(rows), 95)
const faultOf = (...rows: ReturnType<typeof row>[]) => tally(...rows).faults.get('p1')

describe('one termination', () => {
  test.each([
    [{ coveragePct: 95 }, undefined],
    [{ coveragePct: 94.9 }, 'short of the limit'],
    [{ coveragePct: 99, nonWettingPct: 6 }, 'non-wetting'],
    [{ coveragePct: 90, dewettingPct: 8, nonWettingPct: 2 }, 'dewetting'],
    [{ coveragePct: 90, dewettingPct: 5, nonWettingPct: 5 }, 'non-wetting'],
    [{ coveragePct: 97, nonWettingPct: 2, dewettingPct: 2, pinholesPct: 2 }, 'non-wetting'],
    [{ coveragePct: 97, pinholesPct: 6 }, 'short of the limit'],
    [{ coveragePct: null }, 'not readable'],
    [{ coveragePct: Number.NaN }, 'not readable'],
  ] as const)('%j is %s', (over, fault) => {
    expect(faultOf(row(over))).toBe(fault)
  })
  test('faults of 4.4, 0.4 and 0.2 % leave 95 %, which is covered enough', () => {
    expect(100 - 4.4 - 0.4 - 0.2).toBeLessThan(95)
    expect(faultOf(row({ nonWettingPct: 4.4, dewettingPct: 0.4, pinholesPct: 0.2 }))).toBeUndefined()
  })
  test('faults that contradict the stated coverage win', () => {
    expect(tally(row({ coveragePct: 99, nonWettingPct: 3, dewettingPct: 3 })).worst).toBe(94)
  })
})

describe('a part', () => {
  test('is as good as its worst termination', () => {
    expect(faultOf(row(), row({ termination: '2', coveragePct: 80 }), row({ termination: '3' }))).toBe(
      'short of the limit',
    )
  })
  test('with several faults bears the gravest, in whatever order', () => {
    const drewBack = row({ coveragePct: 80, dewettingPct: 20 })
    const never = row({ coveragePct: 80, nonWettingPct: 20 })
    expect(faultOf(drewBack, never)).toBe('non-wetting')
    expect(faultOf(never, drewBack)).toBe('non-wetting')
  })
})

describe('a lot of components', () => {
  const conditions = { ...boardConditions, bathTemperatureC: 245, ageing: 'steam-8h' } as const
  const values = [
    set(lotsNeeded, [needed('transformer T1', 'component', 'dip-and-look')]),
    set(testConditions, [stated('dip-and-look', conditions)]),
    set(inspectionLevel, 'S-3'),
    set(acceptableQualityLevel, '1.0'),
  ]
  const parts = (count: number, leads: number, coverage = 99) =>
    Array.from({ length: count * leads }, (_, at) =>
      row({ specimen: `p${Math.floor(at / leads)}`, termination: String(at % leads), coveragePct: coverage }),
    )
  const findingWith = (rows: ReturnType<typeof row>[]) =>
    findingOf(dipAndLookCoverage, {
      values,
      instruments: [timer],
      lots: [
        lot({
          kind: 'component',
          part: 'transformer T1',
          tests: [testOf('dip-and-look', rows, { conditions })],
        }),
      ],
    })
  test('22 leads of three parts are not 22 trials', () => {
    const finding = findingWith(parts(3, 8))
    expect(finding.verdict).toBe('undetermined')
    expect(finding.found).toContain('3 tested (24 places)')
    expect(finding.notes?.join(' ')).toContain('not independent trials')
  })
  test('13 good parts are accepted', () => {
    expect(findingWith(parts(13, 2)).verdict).toBe('meets')
  })
  test('a coverage inside by less than one per cent is close', () => {
    expect(findingWith(parts(13, 2, 96)).verdict).toBe('meets')
    expect(findingWith(parts(13, 2, 95.5)).verdict).toBe('marginal')
    expect(findingWith(parts(13, 2, 95)).verdict).toBe('marginal')
    expect(findingWith(parts(13, 2, 94.9)).verdict).toBe('fails')
  })
})
