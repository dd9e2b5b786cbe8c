import { describe, expect, test } from 'vitest'
import { assessmentItems } from '@/shared/catalogue/assessment-items'
import { judge } from '@/shared/rules/rule'
import { DEMO_PROGRAMMES, demoState } from '../rules/demo/demo-state'
import { CLAIMS, lawWithoutRecords, restsOnRecords } from './without-records'

const rules = assessmentItems.flatMap((item) => item.rules)

describe('the assessment rests on evidence', () => {
  test('every rule of the assessment looks at records', () => {
    const without = rules.filter((rule) => !restsOnRecords(rule))
    expect(without.map(({ id }) => id)).toEqual([])
  })
  lawWithoutRecords(rules)

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
          if (CLAIMS.includes(verdict))
            expect(CLAIMS, `${rule.id} with ${keep} of ${rows.length}`).toContain(before[index])
        })
      }
    },
  )
})
