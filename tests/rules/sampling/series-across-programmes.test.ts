import { describe, expect, test } from 'vitest'
import { inspectionSeries } from '@/shared/sampling/inspection-series'
import { inspectionState } from '@/shared/rules/evaluation/inspection-state'
import { rotaryDipWettingTime } from '@/shared/rules/evaluation/rotary-dip-wetting-time'
import { lotsNeededPresent } from '@/shared/rules/evaluation/lots-needed-present'
import { factsWith, findingOf } from '../facts-builder'
import { boardConditions, boardPlan, lot, rotaryDip, timer, times } from '../lots-builder'

const dipped = (code: string, day: string, outcome: 'good' | 'slow', over: object = {}) =>
  lot({
    id: code,
    code,
    receivedOn: day,
    tests: [
      rotaryDip([...times(19, 1), outcome === 'good' ? 1 : 5], { testedOn: day, id: `t-${code}`, ...over }),
    ],
  })
const own = dipped('B-03', '2026-02-03', 'good')
const slow = [dipped('B-01', '2026-02-01', 'slow'), dipped('B-02', '2026-02-02', 'slow')]
const given = { values: boardPlan, instruments: [timer] }

// MIL-STD-105E 4.7 (read in a reproduction): of the supplier's lots as they come, whoever they are for.
describe('other deliveries of the same supplier and part', () => {
  test('make the sampling stricter, and are no lots of this programme', () => {
    expect(findingOf(inspectionState, { ...given, lots: [own] }).verdict).toBe('meets')
    const finding = findingOf(inspectionState, { ...given, lots: [own], deliveries: slow })
    expect(finding.verdict).toBe('marginal')
    expect(finding.parts).toHaveLength(1)
    const wetting = findingOf(rotaryDipWettingTime, { ...given, lots: [own], deliveries: slow })
    expect(wetting.parts?.map(({ about }) => about?.['lot'])).toEqual(['B-03'])
  })
  test('are shown in the series as lots of elsewhere', () => {
    const [series] = inspectionSeries(factsWith({ ...given, lots: [own], deliveries: slow }))
    expect(series?.steps.map(({ lot: code, elsewhere }) => [code, elsewhere])).toEqual([
      ['B-01', true],
      ['B-02', true],
      ['B-03', false],
    ])
  })
  test('count only as far as they were tested as this programme specifies', () => {
    const unlike = slow.map((one) => ({
      ...one,
      tests: one.tests.map((old) => ({ ...old, conditions: { ...boardConditions, flux: 'process-flux' } })),
    }))
    expect(findingOf(inspectionState, { ...given, lots: [own], deliveries: unlike }).verdict).toBe('meets')
  })
  test('are no lot that this programme waits for', () => {
    expect(findingOf(lotsNeededPresent, { ...given, deliveries: slow }).verdict).toBe('undetermined')
  })
})
