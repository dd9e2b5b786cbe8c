import { describe, expect, test } from 'vitest'
import { liveTurns } from '@/shared/gate/live-turns'
import { ALL_RULES } from '@/shared/catalogue/standard-plan'
import { numberParameter } from '@/shared/plan/parameter'
import { leadHoles } from '@/shared/plan/parameters/lead-holes'
import { judgeAll } from '@/shared/rules/judge-all'
import { rule, type AnyRule } from '@/shared/rules/rule'
import { factsWith, set, withValue } from '../facts-builder'

const amount = numberParameter({
  key: 'amount',
  label: 'Amount',
  help: '',
  owner: 'design',
  unit: '1',
  min: 0,
  max: 100,
})
const ruleOf = (id: string, judge: (found: number) => string): AnyRule =>
  rule({
    id,
    title: id,
    why: 'For the test.',
    formula: 'none',
    stage: 'specification',
    version: 3,
    reads: { amount },
    judge: (inputs) => ({
      verdict: 'meets',
      found: judge(inputs.amount),
      limit: 'none',
      working: [],
      sources: [],
    }),
  })

const sound = ruleOf('sound', (found) => `It is ${found}.`)
const thrown = new TypeError('x is undefined')
let tries = 0
const broken = ruleOf('broken', (found) => {
  tries++
  if (found > 10) throw thrown
  return `It is ${found}.`
})
const rules = [broken, sound]
const facts = factsWith({ values: [set(amount, 11)] })

describe('a rule that throws', () => {
  test('is one undetermined finding that says so; the rest is judged, and what it threw comes along', () => {
    const { findings, failures } = judgeAll(rules, facts)
    expect(findings.get('broken')).toMatchObject({
      rule: 'broken',
      version: 3,
      verdict: 'undetermined',
      found: 'This rule could not be computed: the program failed on what is specified and recorded.',
    })
    expect(findings.get('broken')?.remedy?.message).toContain('log')
    expect(findings.get('sound')?.found).toBe('It is 11.')
    expect([...failures]).toEqual([['broken', { thrown }]])
  })

  test('is not tried again on the same inputs, and its failure stays the same object', () => {
    const before = judgeAll(rules, facts)
    tries = 0
    const after = judgeAll(rules, { ...facts, today: '2026-03-03' }, before)
    expect(tries).toBe(0)
    expect(after.findings.get('broken')).toBe(before.findings.get('broken'))
    expect(after.failures.get('broken')).toBe(before.failures.get('broken'))
  })

  test('is judged like any other once its inputs change', () => {
    const { findings, failures } = judgeAll(rules, withValue(facts, set(amount, 9)), judgeAll(rules, facts))
    expect(findings.get('broken')).toMatchObject({ verdict: 'meets', found: 'It is 9.' })
    expect(failures.size).toBe(0)
  })
})

describe('a date that an earlier version let pass and that no calendar has', () => {
  const record = {
    id: 'r',
    worker: 'A',
    skill: 'hand-soldering',
    passedOn: '2026-01-12',
    expiresOn: '2027-02-30',
    certificate: 'H-1',
  }
  const run = { id: 's', doneOn: '2026-02-02', worker: 'A', skill: 'hand-soldering', assemblies: 1 }
  const judged = judgeAll(ALL_RULES, factsWith({ records: { training: [record], 'soldering-run': [run] } }))

  test('leaves the rules that count with it undetermined, naming it, and no other', () => {
    expect([...judged.failures.keys()]).toEqual(['trained-people'])
    expect(judged.findings.get('trained-people')).toMatchObject({
      verdict: 'undetermined',
      found: expect.stringContaining('"2027-02-30" is not a date of the calendar'),
      remedy: { message: expect.stringContaining('Withdraw the record') },
    })
  })
})

test('a rule that throws on a value being typed is told as undetermined, and the others are told too', () => {
  // No schema lets null in for a row: the catalogue's own rules are made to throw.
  const turns = liveTurns(leadHoles, [null], { values: {}, requirements: [], today: '2026-03-02' })
  const found = [...turns.turned, ...turns.steady].map(({ found: message }) => message)
  expect(found.filter((message) => message.includes('could not be computed')).length).toBeGreaterThan(0)
  expect(found.filter((message) => message.includes('Cannot be judged without')).length).toBeGreaterThan(0)
})
