import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Chart } from '@/shared/statistics/charts/chart'
import { cumulativeSumChart } from '@/shared/statistics/charts/cumulative-sum'
import { individualsChart } from '@/shared/statistics/charts/individuals'
import { meanAndRange } from '@/shared/statistics/charts/mean-and-range'
import { chartInPhases } from '@/shared/statistics/charts/phases'
import { proportionDefectiveChart } from '@/shared/statistics/charts/proportion-defective'
import { detectSignals } from '@/shared/statistics/run-rules/detect'
import { NELSON_1984 } from '@/shared/statistics/run-rules/nelson'
import type { RunRule } from '@/shared/statistics/run-rules/rule'
import type { Signal } from '@/shared/statistics/run-rules/signal'
import { WESTERN_ELECTRIC_1956 } from '@/shared/statistics/run-rules/western-electric'

const ALL: readonly RunRule[] = [...WESTERN_ELECTRIC_1956, ...NELSON_1984]

/** Small whole numbers and shifts, so that sums are exact and a law can be held to the last digit. */
const series = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 2, maxLength: 60 })
const shift = fc.integer({ min: -1000, max: 1000 })

/** Readings in tenths of a sigma about zero: whole numbers, so zone lines are met exactly. */
const known = (values: readonly number[], centre = 0, processSigma = 10): Chart =>
  individualsChart(values, { kind: 'frozen', setBy: 'law', centre, processSigma })
const signalsOf = (chart: Chart): Signal[] => detectSignals(chart, ALL)
const inOrder = (signals: readonly Signal[]) =>
  signals.map((signal) => JSON.stringify(signal)).sort((one, other) => one.localeCompare(other))

describe('limits', () => {
  test('move with a shift of all readings, and keep their width', () => {
    fc.assert(
      fc.property(series, shift, (values, by) => {
        const before = individualsChart(values)
        const after = individualsChart(values.map((value) => value + by))
        expect(after.upper[0]! - before.upper[0]!).toBeCloseTo(by, 8)
        expect(after.lower[0]! - before.lower[0]!).toBeCloseTo(by, 8)
        expect(after.sigma[0]).toBeCloseTo(before.sigma[0]!, 8)
      }),
    )
  })

  test('widen in proportion to the scale of the readings', () => {
    fc.assert(
      fc.property(series, fc.integer({ min: 1, max: 50 }), (values, scale) => {
        const before = individualsChart(values)
        const after = individualsChart(values.map((value) => value * scale))
        expect(after.upper[0]).toBeCloseTo(before.upper[0]! * scale, 6)
      }),
    )
  })

  test('do not depend on the order of readings within a subgroup', () => {
    const subgroups = fc.array(fc.array(fc.integer({ min: 0, max: 99 }), { minLength: 4, maxLength: 4 }), {
      minLength: 2,
      maxLength: 20,
    })
    fc.assert(
      fc.property(subgroups, (rows) => {
        const turned = rows.map((row) => [...row].reverse())
        expect(meanAndRange(turned).means.upper[0]).toBeCloseTo(meanAndRange(rows).means.upper[0]!, 9)
      }),
    )
  })

  test('of a share lie between 0 and 1, with the centre between them, and narrow with the sample', () => {
    const samples = fc.array(
      fc
        .integer({ min: 1, max: 500 })
        .chain((size) => fc.tuple(fc.integer({ min: 0, max: size }), fc.constant(size))),
      { minLength: 1, maxLength: 30 },
    )
    fc.assert(
      fc.property(samples, (pairs) => {
        const sizes = pairs.map(([, size]) => size)
        const chart = proportionDefectiveChart(
          pairs.map(([found]) => found),
          sizes,
        )
        sizes.forEach((size, index) => {
          expect(chart.lower[index]).toBeGreaterThanOrEqual(0)
          expect(chart.upper[index]).toBeLessThanOrEqual(1)
          expect(chart.lower[index]).toBeLessThanOrEqual(chart.centre[index]!)
          expect(chart.upper[index]).toBeGreaterThanOrEqual(chart.centre[index]!)
          if (size > sizes[0]!) expect(chart.sigma[index]).toBeLessThanOrEqual(chart.sigma[0]!)
        })
      }),
    )
  })

  test('of one phase over all is the chart without phases', () => {
    fc.assert(
      fc.property(series, (values) => {
        const whole = individualsChart(values)
        const phased = chartInPhases(values, [{ name: 'whole', from: 0 }], (part) => individualsChart(part))
        expect(phased).toEqual(whole)
      }),
    )
  })
})

describe('run rules', () => {
  test('see the same when readings, centre and sigma are shifted or scaled together', () => {
    fc.assert(
      fc.property(series, shift, fc.integer({ min: 1, max: 20 }), (values, by, scale) => {
        const moved = values.map((value) => value * scale + by)
        expect(signalsOf(known(moved, by, 10 * scale))).toEqual(signalsOf(known(values)))
      }),
    )
  })

  test('see above for below when readings are turned over', () => {
    const turned = {
      above: 'below',
      below: 'above',
      rising: 'falling',
      falling: 'rising',
      either: 'either',
    } as const
    fc.assert(
      fc.property(series, (values) => {
        const mirrored = signalsOf(known(values.map((value) => -value))).map((signal) => ({
          ...signal,
          direction: turned[signal.direction],
        }))
        expect(inOrder(mirrored)).toEqual(inOrder(signalsOf(known(values))))
      }),
    )
  })

  test('take the same points whether the series is read forwards or backwards', () => {
    const pointsBy = (signals: readonly Signal[], read: (point: number) => number): string[] =>
      [
        ...new Set(
          signals.flatMap(({ ruleId, points }) => points.map((point) => `${ruleId} ${read(point)}`)),
        ),
      ].sort()
    fc.assert(
      fc.property(series, (values) => {
        const last = values.length - 1
        const backwards = signalsOf(known([...values].reverse()))
        expect(pointsBy(backwards, (point) => last - point)).toEqual(
          pointsBy(signalsOf(known(values)), (p) => p),
        )
      }),
    )
  })

  test('name points that exist, rising, with the sounding one among them, and none later in a shorter series', () => {
    fc.assert(
      fc.property(series, (values) => {
        const found = signalsOf(known(values))
        for (const { points, soundedAt } of found) {
          expect(points).toContain(soundedAt)
          points.forEach((point, index) => {
            expect(point).toBeLessThan(values.length)
            if (index > 0) expect(point).toBeGreaterThan(points[index - 1]!)
          })
        }
        const sounded = (signals: readonly Signal[], before: number) =>
          signals
            .filter(({ soundedAt }) => soundedAt < before)
            .map(({ ruleId, soundedAt }) => `${ruleId} ${soundedAt}`)
        const cut = values.length - 1
        if (cut > 0) expect(sounded(signalsOf(known(values.slice(0, cut))), cut)).toEqual(sounded(found, cut))
      }),
    )
  })
})

test('a cumulative sum never falls below zero, and its two sides swap when readings are turned over', () => {
  fc.assert(
    fc.property(series, (values) => {
      const design = { target: 0, allowance: 5, decisionInterval: 40 }
      const chart = cumulativeSumChart(values, design)
      const mirrored = cumulativeSumChart(
        values.map((value) => -value),
        design,
      )
      expect(Math.min(...chart.high, ...chart.low)).toBeGreaterThanOrEqual(0)
      expect(mirrored.high).toEqual(chart.low)
      expect(mirrored.low).toEqual(chart.high)
    }),
  )
})
