import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { inspectionSeries } from '@/shared/sampling/inspection-series'
import { inspectionAfter } from '@/shared/statistics/sampling/switching'
import { factsWith } from '../facts-builder'
import { boardPlan, lot, rotaryDip, timer, times } from '../lots-builder'

/** One lot a day; G is good, B has one slow specimen among twenty, - is not tested. */
const seriesOf = (outcomes: string) => {
  const lots = [...outcomes].map((outcome, at) => {
    const day = new Date(Date.UTC(2026, 0, 6 + at)).toISOString().slice(0, 10)
    const code = `B-${String(at + 1).padStart(2, '0')}`
    const rows = outcome === 'G' ? times(20, 1) : [...times(19, 1), 5]
    const tests = outcome === '-' ? [] : [rotaryDip(rows, { testedOn: day, id: code })]
    return lot({ id: code, code, receivedOn: day, tests })
  })
  return inspectionSeries(factsWith({ values: boardPlan, instruments: [timer], lots }))[0]!
}

// MIL-STD-105E 4.7 (read in a reproduction): two of five or fewer rejected, five in a row accepted.
describe('the history of a supplier’s lots', () => {
  test('names the lot that tightened the inspection and the one that eased it, with the rule', () => {
    const { steps, next } = seriesOf('GBGBGGGGG')
    expect(steps.map(({ severity }) => severity)).toEqual([...times(4, 'normal'), ...times(5, 'tightened')])
    expect(
      steps.flatMap(({ lot: code, switched }) => (switched ? [[code, switched.to, switched.by]] : [])),
    ).toEqual([
      ['B-04', 'tightened', ['B-02', 'B-04']],
      ['B-09', 'normal', ['B-05', 'B-06', 'B-07', 'B-08', 'B-09']],
    ])
    expect(steps[3]?.switched?.because).toContain('Two of the last five')
    expect(steps[8]?.switched?.because).toContain('Five lots in a row')
    expect(next.severity).toBe('normal')
  })
  test('a lot without a test is in the series and changes nothing', () => {
    const { steps, nextPlanMessage } = seriesOf('BB-')
    expect(steps[2]).toMatchObject({ severity: 'tightened', outcome: undefined, switched: undefined })
    expect(nextPlanMessage).toContain('20 pieces')
  })
  test('a discontinued series takes no lot, and names the five rejected on tightened inspection', () => {
    const { steps, nextPlanMessage } = seriesOf('BBBBBBB')
    expect(nextPlanMessage).toBe('No lot is taken.')
    expect(steps[6]?.switched?.by).toEqual(['B-03', 'B-04', 'B-05', 'B-06', 'B-07'])
  })
  test('whatever happened, it ends where the switching rules end', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('G', 'B'), { minLength: 1, maxLength: 14 }), (outcomes) => {
        const { next } = seriesOf(outcomes.join(''))
        const rules = inspectionAfter(
          outcomes.map((one) => ({ kind: 'lot', outcome: one === 'G' ? 'accepted' : 'rejected' })),
        )
        expect(next.severity).toBe(rules.severity)
      }),
      { numRuns: 40 },
    )
  })
})
