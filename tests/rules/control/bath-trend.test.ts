import { describe, expect, test } from 'vitest'
import { alloyFamily } from '@/shared/plan/parameters/programme'
import { solderingProcess } from '@/shared/plan/parameters/soldering-process'
import { addDays } from '@/shared/quantity/calendar'
import { bathTrendRule } from '@/shared/rules/control/bath-trend'
import { trendTowards } from '@/shared/logs/log-trend'
import { findingOf, set } from '../facts-builder'
import { logOf } from '../log-builder'

const VALUES = [set(alloyFamily, 'tin-lead'), set(solderingProcess, 'wave')]
const analyses = (shares: readonly number[], stepDays = 28) =>
  shares.map((copperPct, index) => ({
    at: `${addDays('2026-01-05', index * stepDays)}T00:00:00Z`,
    copperPct,
  }))
const run = {
  id: 'run-1',
  doneOn: '2026-02-27',
  worker: 'Mira Sands',
  skill: 'machine-soldering',
  begunAtH: undefined,
  assemblies: 12,
  serials: undefined,
  lots: undefined,
  line: 'wave 1',
}
const judged = (rows: ReturnType<typeof analyses>, runs: readonly { readonly id: string }[] = [run]) =>
  findingOf(bathTrendRule, {
    values: VALUES,
    logs: [logOf('bath-composition', rows)],
    records: { 'soldering-run': runs },
  })

describe('the line and its crossing', () => {
  // Constructed weekly series, computed with an independent library (mpmath and scipy 1.17.1):
  // intercept 91.74394, slope 0.4034965 a week, residual sd 0.352834; two-sided 95 % at week 16: 97.170474 to 99.229263.
  test('meets the two-sided 95 % bound of week 16 where the published prediction interval puts it', () => {
    const week = 7 * 86_400_000
    const values = [92.1, 92.8, 92.4, 93.5, 93.9, 94.6, 94.1, 95.2, 95.0, 96.1, 96.4, 96.3]
    const trend = trendTowards(
      { instants: values.map((_, index) => (index + 1) * week), values },
      99.22926265219515,
      {
        resetFall: 5,
        confidence: 0.975,
      },
    )
    expect(trend?.fit.slope).toBeCloseTo(0.4034965034965 / 7, 10)
    expect(trend?.fit.residualSigma).toBeCloseTo(0.35283401408, 9)
    // Week 16 is four weeks after the newest reading, of week 12.
    expect(trend?.daysByPrediction).toBeCloseTo(28, 6)
    // By the line: (99.2293 − 91.7439) / 0.4034965 = 18.5514 weeks.
    expect(trend?.daysByLine).toBeCloseTo(
      ((99.22926265219515 - 91.7439393939394) / 0.4034965034965035 - 12) * 7,
      6,
    )
  })
  test('three readings are no trend', () => {
    expect(
      trendTowards({ instants: [0, 1, 2], values: [1, 2, 3] }, 9, { resetFall: 1, confidence: 0.9 }),
    ).toBeUndefined()
  })
})

describe('when the bath will reach its limits', () => {
  test('a steady rise of 0.02 % a month is told with its date', () => {
    // 0.10, 0.12, 0.14, 0.16 on the line: 0.30 lies seven steps of 28 days after the newest.
    const finding = judged(analyses([0.1, 0.12, 0.14, 0.16]))
    expect(finding.verdict).toBe('meets')
    expect(finding.found).toMatch(new RegExp(`by the line on ${addDays('2026-01-05', 3 * 28 + 7 * 28)}`))
  })
  test('a limit that may be reached before the next analysis is marginal', () => {
    const finding = judged(analyses([0.2, 0.23, 0.26, 0.29]))
    expect(finding.verdict).toBe('marginal')
    expect(finding.remedy?.message).toMatch(/plan the exchange/)
  })
  test('an exchange starts the trend anew', () => {
    expect(judged(analyses([0.2, 0.23, 0.26, 0.29, 0.1, 0.11, 0.12])).found).toMatch(/no trend to tell/)
    expect(judged(analyses([0.2, 0.23, 0.26, 0.29, 0.1, 0.11, 0.12, 0.13])).verdict).toBe('meets')
  })
  test('scatter brings the earliest date nearer than the line', () => {
    const finding = judged(analyses([0.1, 0.13, 0.13, 0.17, 0.17]))
    const [, may, line] = /reached on (\S+), by the line on (\S+)\./.exec(finding.found) ?? []
    expect(may! < line!).toBe(true)
  })
  // A line has two coefficients; its scatter takes a third reading, and a bound that is any use a fourth (least squares).
  test.each([
    [1, '3 more analyses'],
    [2, '2 more analyses'],
    [3, '1 more analysis'],
  ] as const)('%s analyses once boards are soldered: %s', (given, more) => {
    const finding = judged(analyses([0.1, 0.12, 0.14].slice(0, given)))
    expect(finding.verdict).toBe('undetermined')
    expect(finding.missing?.[0]).toContain(more)
  })
  test('those before an exchange do not count towards the trend after it', () => {
    expect(judged(analyses([0.2, 0.23, 0.26, 0.29, 0.1, 0.11])).missing?.[0]).toContain('2 more analyses')
  })
  test('nothing soldered, or no bath, asks nothing', () => {
    expect(judged(analyses([0.1, 0.2]), []).verdict).toBe('not applicable')
    expect(
      findingOf(bathTrendRule, { values: [set(alloyFamily, 'tin-lead'), set(solderingProcess, 'hand')] })
        .verdict,
    ).toBe('not applicable')
  })
})
