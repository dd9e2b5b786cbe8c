import { describe, expect, test } from 'vitest'
import { evaluationItems } from '@/shared/catalogue/evaluation-items'
import { samplingPlanRisk } from '@/shared/rules/evaluation/sampling-plan-risk'
import { judge } from '@/shared/rules/rule'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { Facts } from '@/shared/rules/facts'
import { demoState } from '../rules/demo/demo-state'
import { CLAIMS, lawWithoutRecords, restsOnRecords } from './without-records'

const evaluationRules = evaluationItems.flatMap((item) => item.rules)
const rules = evaluationRules.filter(restsOnRecords)

describe('the evaluation rests on evidence', () => {
  test('every rule but the one on what an ageing stands for looks at records', () => {
    const without = evaluationRules.filter((rule) => !restsOnRecords(rule))
    expect(without.map(({ id }) => id)).toEqual(['ageing-stands-for'])
  })
  // The plan is judged as it is stated, before a lot comes.
  lawWithoutRecords(rules.filter((rule) => rule !== samplingPlanRisk))

  /** The demo's main board, whose evaluation is told to the end. */
  const { facts } = demoState('lx-41')
  const lots = facts.records.lots
  const withLots = (some: readonly Lot[]): Facts => ({ ...facts, records: { ...facts.records, lots: some } })
  const without = (lot: Lot, change: Partial<Lot>) =>
    withLots(lots.map((one) => (one === lot ? { ...one, ...change } : one)))
  const poorer: readonly (readonly [string, Facts])[] = [
    ['no lots', withLots([])],
    ['no instruments', { ...facts, records: { ...facts.records, instruments: [] } }],
    ...lots.flatMap((lot): (readonly [string, Facts])[] => [
      [`${lot.code} without its tests`, without(lot, { tests: [] })],
      [`${lot.code} without readings`, without(lot, { tests: lot.tests.map(emptied) })],
      [`${lot.code} not disposed of`, without(lot, { disposition: null })],
    ]),
  ]
  test.each(poorer)('%s: nothing meets that did not before', (_, less) => {
    for (const rule of rules) {
      if (CLAIMS.includes(judge(rule, facts).verdict)) continue
      expect([rule.id, judge(rule, less).verdict]).not.toEqual([rule.id, 'meets'])
    }
  })
  test('without its tests no lot is shown to be anything', () => {
    const untested = withLots(lots.map((lot) => ({ ...lot, tests: [] })))
    const meeting = rules.filter((rule) => judge(rule, untested).verdict === 'meets').map(({ id }) => id)
    // The plan is judged before the tests, the gauges by their studies, the traces by what was built.
    expect(meeting).toEqual(['sampling-plan-risk', 'gauges-capable', 'lots-traced'])
  })
})

const emptied = (test: LotTest): LotTest => ({ ...test, readings: { count: 0, columns: {} } })
