import { describe, expect, test } from 'vitest'
import { agreementStudies, type InspectorCall } from '@/shared/inspection/agreement-study'
import { inspectorAgreement } from '@/shared/rules/assessment/inspector-agreement'
import { cohenKappa } from '@/shared/statistics/agreement/cohen-kappa'
import { fleissKappa } from '@/shared/statistics/agreement/fleiss-kappa'
import reference from '@/tests/reference/statistics/agreement.json'
import { findingOf } from '../facts-builder'

type Call = InspectorCall['call']

/** One row a joint: what each inspector called it. */
const calls = (
  inspectors: readonly string[],
  rows: readonly (readonly Call[])[],
  over: Partial<InspectorCall> = {},
): InspectorCall[] =>
  rows.flatMap((row, at) =>
    inspectors.map((inspector, position) => ({
      id: `${inspector}-${at}`,
      calledOn: '2026-02-10',
      study: 'Set 1',
      inspector,
      joint: `S-${at}`,
      round: 1,
      call: row[position]!,
      reference: undefined,
      ...over,
    })),
  )
const times = <T>(count: number, value: T): T[] => Array.from({ length: count }, () => value)

/** The table of 50 objects with 20, 5, 10 and 15: kappa 0.4, 0.151 to 0.649 (textbook example; computed with statsmodels 0.13.5). */
const fifty = [
  ...times(20, ['sound', 'sound'] as Call[]),
  ...times(5, ['sound', 'bridge'] as Call[]),
  ...times(10, ['void', 'sound'] as Call[]),
  ...times(15, ['bridge', 'bridge'] as Call[]),
]

describe('a blind set called by two', () => {
  const [study] = agreementStudies(calls(['A', 'B'], fifty), 0.95)
  test('gives the textbook’s table, kappa and interval', () => {
    const [pair] = study!.pairs
    expect(pair).toMatchObject({ one: 'A', other: 'B', joints: 50, table: reference.fiftyProposals.table })
    expect(pair!.kappa!.kappa).toBeCloseTo(0.4, 12)
    expect(pair!.kappa!.interval!.lower).toBeCloseTo(reference.fiftyProposals.values.ci95[0]!, 10)
    expect(pair!.kappa!.interval!.upper).toBeCloseTo(reference.fiftyProposals.values.ci95[1]!, 10)
  })
  test('names the fifteen joints not called alike, and keeps the kinds apart in their own table', () => {
    expect(study!.disputed).toHaveLength(15)
    expect(study!.pairs[0]!.kinds).toEqual(['sound', 'void', 'bridge'])
    expect(study!.pairs[0]!.kindTable).toEqual([
      [20, 0, 5],
      [10, 0, 0],
      [0, 0, 15],
    ])
  })
})

describe('what is known, second rounds, several inspectors', () => {
  const rows: Call[][] = [
    ['sound', 'sound', 'sound'],
    ['bridge', 'bridge', 'void'],
    ['sound', 'bridge', 'sound'],
    ['void', 'void', 'void'],
  ]
  const all = calls(['A', 'B', 'C'], rows).map((call) => ({
    ...call,
    reference:
      call.inspector === 'A'
        ? (['sound', 'bridge', 'bridge', 'void'] as Call[])[Number(call.joint.slice(2))]
        : undefined,
  })) as InspectorCall[]
  const again = calls(['A'], rows, { round: 2 })
  const [study] = agreementStudies([...all, ...again], 0.95)
  test('each is held against what is known: A let one defect pass', () => {
    expect(study!.withKnown.map(({ one, table }) => [one, table])).toEqual([
      [
        'A',
        [
          [1, 1],
          [0, 2],
        ],
      ],
      [
        'B',
        [
          [1, 0],
          [0, 3],
        ],
      ],
      [
        'C',
        [
          [1, 1],
          [0, 2],
        ],
      ],
    ])
  })
  test('A agreed with the own first round', () => {
    expect(study!.withSelf.map(({ one, joints, kappa }) => [one, joints, kappa?.kappa])).toEqual([
      ['A', 4, 1],
    ])
  })
  test('three together, as Fleiss counts them', () => {
    const counts = [
      [3, 0],
      [0, 3],
      [2, 1],
      [0, 3],
    ]
    expect(study!.together?.kappa).toBeCloseTo(fleissKappa(counts).kappa!, 12)
    expect(study!.byKind.map(({ call }) => call)).toEqual(['sound', 'bridge', 'void'])
  })
  test('a joint that one inspector skipped is left out of all together, not of the pairs', () => {
    const [short] = agreementStudies(
      all.filter(({ inspector, joint }) => !(inspector === 'C' && joint === 'S-0')),
      0.95,
    )
    expect(short!.together?.objects).toBe(3)
    expect(short!.pairs.map(({ joints }) => joints)).toEqual([4, 3, 3])
  })
  test('the finding says what all show together', () => {
    const finding = findingOf(inspectorAgreement, { records: { 'inspector-call': [...all, ...again] } })
    expect(finding.parts).toHaveLength(6)
    expect(finding.notes?.join(' ')).toMatch(/all 3 inspectors together kappa 0\.\d+ \(.*by Fleiss/)
    expect(finding.notes?.join(' ')).toMatch(/A with the own second round kappa 1\./)
  })
})

describe('the interval of Fleiss’s kappa', () => {
  // With two inspectors of equal shares, linearisation gives the error that Fleiss, Cohen and Everitt (1969) give
  // Cohen's kappa, but for n − 1 in place of n: both follow from the same derivative.
  test('two inspectors with equal shares: the error of Cohen’s kappa', () => {
    const table = [
      [20, 5],
      [5, 20],
    ]
    const counts = [...times(20, [2, 0]), ...times(10, [1, 1]), ...times(20, [0, 2])]
    const found = fleissKappa(counts)
    expect(found.kappa).toBeCloseTo(0.6, 12)
    expect(found.standardError! * Math.sqrt(49 / 50)).toBeCloseTo(cohenKappa(table, 0.95).standardError!, 12)
  })
  // Quenouille's jackknife, leaving out one object at a time, is another road to the same error.
  test.each([{ counts: reference.fleiss1971.counts }, { counts: reference.fourteenRaters.counts }])(
    'the jackknife over objects comes out within a tenth (%#)',
    ({ counts }) => {
      const n = counts.length
      const left = counts.map((_, out) => fleissKappa(counts.filter((__, at) => at !== out)).kappa!)
      const mean = left.reduce((sum, kappa) => sum + kappa, 0) / n
      const jackknife = Math.sqrt(((n - 1) / n) * left.reduce((sum, kappa) => sum + (kappa - mean) ** 2, 0))
      const { standardError, interval, kappa } = fleissKappa(counts, 0.9)
      expect(Math.abs(standardError! / jackknife - 1)).toBeLessThan(0.1)
      expect(interval!.upper - kappa!).toBeCloseTo(1.6448536 * standardError!, 6)
    },
  )
  test('full agreement claims no interval', () => {
    expect(
      fleissKappa([
        [3, 0],
        [0, 3],
      ]),
    ).toMatchObject({ kappa: 1, interval: undefined })
  })
})
