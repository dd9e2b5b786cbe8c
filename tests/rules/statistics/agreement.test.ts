import { describe, expect, test } from 'vitest'
import { cohenKappa } from '@/shared/statistics/agreement/cohen-kappa'
import { callCounts, crossTable } from '@/shared/statistics/agreement/cross-table'
import { fleissKappa } from '@/shared/statistics/agreement/fleiss-kappa'
import reference from '@/tests/reference/statistics/agreement.json'

describe('two inspectors', () => {
  // Computed with statsmodels 0.13.5; kappa 0.4 also printed.
  test('fifty proposals: 0.4, and 0.151 to 0.649', () => {
    const { table, values } = reference.fiftyProposals
    const found = cohenKappa(table, 0.95)
    expect(found.observedAgreement).toBeCloseTo(values.po, 12)
    expect(found.chanceAgreement).toBeCloseTo(values.pe, 12)
    expect(found.kappa).toBeCloseTo(values.kappa, 12)
    expect(found.standardError).toBeCloseTo(values.se, 12)
    expect(found.standardErrorIfChance).toBeCloseTo(values.se0, 12)
    expect(found.interval!.lower).toBeCloseTo(values.ci95[0]!, 10)
    expect(found.interval!.upper).toBeCloseTo(values.ci95[1]!, 10)
  })

  test('three categories, with and without weights', () => {
    const { table, values } = reference.threeByThree
    const found = cohenKappa(table, 0.95)
    expect(found.kappa).toBeCloseTo(values.kappa, 12)
    expect(found.standardError).toBeCloseTo(values.se, 12)
    expect(found.standardErrorIfChance).toBeCloseTo(values.se0, 12)
    const weighted = cohenKappa(table, 0.95, 'linear')
    expect(weighted.kappa).toBeCloseTo(values.weighted_linear.kappa, 4)
    expect(weighted.standardError).toBeCloseTo(values.weighted_linear.se, 4)
    expect(weighted.standardErrorIfChance).toBeCloseTo(values.weighted_linear.se0, 4)
    expect(weighted.interval!.lower).toBeCloseTo(values.weighted_linear.ci95[0]!, 4)
    expect(weighted.interval!.upper).toBeCloseTo(values.weighted_linear.ci95[1]!, 4)
  })

  test.each(reference.sameAgreement.rows)(
    'equal agreement, unequal kappa: $kappa',
    ({ table, kappa, se }) => {
      const found = cohenKappa(table, 0.95)
      expect(found.observedAgreement).toBeCloseTo(0.6, 12)
      expect(found.kappa).toBeCloseTo(kappa, 12)
      expect(found.standardError).toBeCloseTo(se, 12)
    },
  )

  test('7477 pairs of eyes', () => {
    const { kappa, standardErrorIfChance } = cohenKappa(reference.vision.table, 0.95)
    expect(kappa).toBeCloseTo(reference.vision.values.kappa, 10)
    expect(kappa! / standardErrorIfChance!).toBeCloseTo(reference.vision.values.z, 7)
  })

  test('graded calls, by three weights', () => {
    const { first, second, values } = reference.anxiety
    const table = crossTable(first, second, [1, 2, 3, 4, 5, 6])
    expect(cohenKappa(table, 0.95).kappa).toBeCloseTo(values.unweighted, 10)
    expect(cohenKappa(table, 0.95, 'linear').kappa).toBeCloseTo(values.linear, 10)
    expect(cohenKappa(table, 0.95, 'quadratic').kappa).toBeCloseTo(values.quadratic, 10)
  })

  test('full agreement is 1, and claims no interval', () => {
    const found = cohenKappa(
      [
        [7, 0],
        [0, 3],
      ],
      0.95,
    )
    expect(found.kappa).toBe(1)
    expect(found.interval).toBeUndefined()
  })

  test('when both used one category, kappa is undefined', () => {
    const found = cohenKappa(
      [
        [9, 0],
        [0, 0],
      ],
      0.95,
    )
    expect(found.observedAgreement).toBe(1)
    expect(found.kappa).toBeUndefined()
  })

  test.each([
    [[[1]]],
    [[[1, 2], [3]]],
    [
      [
        [0, 0],
        [0, 0],
      ],
    ],
    [
      [
        [1, -1],
        [0, 1],
      ],
    ],
    [
      [
        [1, 0.5],
        [0, 1],
      ],
    ],
  ])('%j is no table of calls', (table) => {
    expect(() => cohenKappa(table, 0.95)).toThrow(RangeError)
  })

  test('a call outside the categories, or lists of unequal length, are refused', () => {
    expect(() => crossTable(['sound'], ['odd'], ['sound', 'void'])).toThrow('“odd”')
    expect(() => crossTable(['sound'], [], ['sound'])).toThrow(RangeError)
  })
})

describe('several inspectors', () => {
  // Fleiss 1971, thirty patients; kappa 0.430 printed, the digits computed in R and numpy.
  test('Fleiss’s own example', () => {
    const { counts, values, printedByCategory, conger } = reference.fleiss1971
    const found = fleissKappa(counts)
    expect(found).toMatchObject({ objects: 30, inspectors: 6 })
    expect(found.kappa).toBeCloseTo(values.kappa, 12)
    expect(found.kappa).toBeCloseTo(0.43, 3)
    expect(found.observedAgreement).toBeCloseTo(values.Pbar, 12)
    expect(found.chanceAgreement).toBeCloseTo(values.Pe, 12)
    expect(found.standardErrorIfChance).toBeCloseTo(values.se0_FNL1979, 12)
    expect(found.kappa! / found.standardErrorIfChance!).toBeCloseTo(values.z, 8)
    found.kappaByCategory.forEach((kappa, index) => {
      expect(kappa).toBeCloseTo(values.kappa_category[index]!, 12)
      expect(kappa).toBeCloseTo(printedByCategory[index]!, 3)
    })
    expect(found.kappa).toBeLessThan(conger)
  })

  test('fourteen raters, with the agreement about each object', () => {
    const { counts, values, agreementByObject } = reference.fourteenRaters
    const found = fleissKappa(counts)
    expect(found.kappa).toBeCloseTo(values.kappa, 12)
    expect(found.standardErrorIfChance).toBeCloseTo(values.se0_FNL1979, 12)
    found.agreementByObject.forEach((share, index) => expect(share).toBeCloseTo(agreementByObject[index]!, 3))
  })

  // statsmodels 0.13.5 test suite (read).
  test.each([
    [
      [
        [7, 1],
        [3, 5],
      ],
      0.161905,
    ],
    [
      [
        [6, 1, 0],
        [0, 7, 0],
      ],
      0.708333,
    ],
    [
      [
        [7, 0],
        [0, 7],
      ],
      1,
    ],
  ])('%j gives %f', (counts, kappa) => {
    expect(fleissKappa(counts).kappa).toBeCloseTo(kappa, 6)
  })

  test('one category throughout leaves kappa undefined', () => {
    const found = fleissKappa([
      [7, 0],
      [7, 0],
    ])
    expect(found.kappa).toBeUndefined()
    expect(found.kappaByCategory).toEqual([undefined, undefined])
    expect(found.standardErrorIfChance).toBeUndefined()
  })

  test('calls are counted by category', () => {
    expect(
      callCounts(
        [
          ['a', 'b', 'a'],
          ['b', 'b', 'b'],
        ],
        ['a', 'b'],
      ),
    ).toEqual([
      [2, 1],
      [0, 3],
    ])
  })

  test.each([
    [[]],
    [[[3]]],
    [[[1, 0]]],
    [
      [
        [1, 2],
        [1, 1],
      ],
    ],
    [[[1, 2], [3]]],
    [[[1.5, 1.5]]],
  ])('%j cannot be judged', (counts) => {
    expect(() => fleissKappa(counts as number[][])).toThrow(RangeError)
  })
})
