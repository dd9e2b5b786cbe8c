import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { evaluationItems } from '@/shared/catalogue/evaluation-items'
import { ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import type { Verdict } from '@/shared/rules/finding'
import { judge, readableOf, type AnyRule } from '@/shared/rules/rule'
import type { Lot, LotTest } from '@/shared/records/lot'
import type { Facts } from '@/shared/rules/facts'
import { demoState } from '../rules/demo/demo-state'
import { findingOf, unchecked, type SetValue } from '../rules/facts-builder'
import { anyValue } from './any-value'

const evaluationRules = evaluationItems.flatMap((item) => item.rules)
const restsOnRecords = ({ reads }: AnyRule): boolean =>
  Object.values(reads).some((read) => readableOf(read).source === 'records')
const rules = evaluationRules.filter(restsOnRecords)
const message: readonly Verdict[] = ['meets', 'marginal']

describe('the evaluation rests on evidence', () => {
  test('every rule but the one on what an ageing stands for looks at records', () => {
    const without = evaluationRules.filter((rule) => !restsOnRecords(rule))
    expect(without.map(({ id }) => id)).toEqual(['ageing-stands-for'])
  })
  test.each(rules.map((rule) => [rule.id, rule] as const))('%s does not meet on nothing', (_, rule) => {
    expect(message).not.toContain(findingOf(rule).verdict)
  })
  const read = new Set(rules.flatMap((rule) => Object.values(rule.reads).map((one) => readableOf(one).key)))
  const parameters = ALL_PARAMETERS.filter(({ key }) => read.has(key))
  const specification = fc
    .tuple(...parameters.map((parameter) => fc.option(anyValue(parameter), { nil: undefined })))
    .map((values) =>
      values.flatMap((value, index): SetValue[] =>
        value === undefined ? [] : [unchecked(parameters[index]!, value)],
      ),
    )
  test.each(rules.map((rule) => [rule.id, rule] as const))(
    '%s does not meet without a record, whatever is specified',
    (_, rule) => {
      fc.assert(
        fc.property(specification, (values) => {
          expect(message).not.toContain(findingOf(rule, { values }).verdict)
        }),
        { numRuns: 60 },
      )
    },
  )

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
      if (message.includes(judge(rule, facts).verdict)) continue
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
