import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { assessmentItems } from '@/shared/catalogue/assessment-items'
import { ALL_PARAMETERS } from '@/shared/catalogue/standard-plan'
import type { Verdict } from '@/shared/rules/finding'
import { judge, readableOf } from '@/shared/rules/rule'
import { findingOf, unchecked, type SetValue } from '../rules/facts-builder'
import { DEMO_PROGRAMMES, demoState } from '../rules/demo/demo-state'
import { anyValue } from './any-value'

const rules = assessmentItems.flatMap((item) => item.rules)
const named = rules.map((rule) => [rule.id, rule] as const)
const message: readonly Verdict[] = ['meets', 'marginal']

describe('the assessment rests on evidence', () => {
  test('every rule of the assessment looks at records', () => {
    const without = rules.filter(
      ({ reads }) => !Object.values(reads).some((read) => readableOf(read).source === 'records'),
    )
    expect(without.map(({ id }) => id)).toEqual([])
  })
  test.each(named)('%s does not meet on nothing', (_, rule) => {
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
  test.each(named)('%s does not meet without a record, whatever is specified', (_, rule) => {
    fc.assert(
      fc.property(specification, (values) => {
        expect(message).not.toContain(findingOf(rule, { values }).verdict)
      }),
      { numRuns: 60 },
    )
  })

  /**
   * Kinds of which less can only say less: what counts as sound (an exposure, a
   * call, a reading) is taken away, never what speaks against.
   */
  const OF_SOUND = [
    'electrical-test',
    'flux-removal',
    'inspector-call',
    'insulation-resistance',
    'ionic-cleanliness',
    'field-exposure',
  ]
  test.each(DEMO_PROGRAMMES.flatMap((programme) => OF_SOUND.map((kind) => [programme, kind] as const)))(
    'in %s, no finding of the assessment begins to meet when a record of %s is taken away',
    (programme, kind) => {
      const { facts } = demoState(programme)
      const rows = facts.records.byKind.get(kind as never) ?? []
      const before = rules.map((rule) => judge(rule, facts).verdict)
      for (const keep of [0, 1, Math.ceil(rows.length / 2), rows.length - 1]) {
        if (!(keep >= 0 && keep < rows.length)) continue
        const byKind = new Map(facts.records.byKind).set(kind as never, rows.slice(0, keep) as never)
        const less = { ...facts, records: { ...facts.records, byKind } }
        rules.forEach((rule, index) => {
          // What fails may fail by the record taken away.
          if (before[index] === 'fails') return
          const { verdict } = judge(rule, less)
          if (message.includes(verdict))
            expect(message, `${rule.id} with ${keep} of ${rows.length}`).toContain(before[index])
        })
      }
    },
  )
})
