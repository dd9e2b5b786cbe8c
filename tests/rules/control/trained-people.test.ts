import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addDays } from '@/shared/quantity/calendar'
import { NO_READINGS } from '@/shared/records/readings'
import { trainedPeopleRule } from '@/shared/rules/control/trained-people'
import { findingOf, type FactsInput } from '../facts-builder'

const passed = (over: Record<string, string> = {}) => ({
  id: 't1',
  worker: 'A. Ward',
  skill: 'hand-soldering',
  passedOn: '2025-03-01',
  expiresOn: '2027-03-01',
  certificate: 'C-7',
  ...over,
})
const run = (doneOn: string, over: Record<string, string | number> = {}) => ({
  id: `r-${doneOn}`,
  doneOn,
  worker: 'A. Ward',
  skill: 'hand-soldering',
  assemblies: 5,
  ...over,
})
const judged = (
  training: ReturnType<typeof passed>[],
  runs: ReturnType<typeof run>[],
  over: FactsInput = {},
) => findingOf(trainedPeopleRule, { records: { training, 'soldering-run': runs }, ...over })

describe('people trained and current then', () => {
  test('the first and the last day of validity are current; a day beyond is not', () => {
    expect(judged([passed()], [run('2025-03-01')]).verdict).toBe('meets')
    expect(judged([passed()], [run('2027-03-01')]).verdict).toBe('marginal')
    expect(judged([passed()], [run('2027-03-02')]).verdict).toBe('fails')
    expect(judged([passed()], [run('2025-02-28')]).verdict).toBe('fails')
  })
  test('what counts is the day of the work, not today', () => {
    expect(judged([passed()], [run('2026-02-02')], { today: '2030-01-01' }).verdict).toBe('meets')
  })
  test('an expired record renewed later does not cover the gap', () => {
    const records = [
      passed({ expiresOn: '2026-01-31' }),
      passed({ id: 't2', passedOn: '2026-02-10', expiresOn: '2028-02-01' }),
    ]
    expect(judged(records, [run('2026-01-31'), run('2026-02-10')]).verdict).toBe('meets')
    const finding = judged(records, [run('2026-02-05')])
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toMatch(/A\. Ward, hand soldering: certificate not current on 2026-02-05/)
  })
  test('another skill, or another person, does not count', () => {
    expect(judged([passed({ skill: 'inspection' })], [run('2026-02-02')]).verdict).toBe('fails')
    expect(judged([passed({ worker: 'B. Ward' })], [run('2026-02-02')]).verdict).toBe('fails')
  })
  test('case and spacing make no other person', () => {
    expect(judged([passed({ worker: ' a.  ward ' })], [run('2026-02-02')]).verdict).toBe('meets')
  })
  // Certification of the trade runs for 24 months (from memory): a paper that says longer is cut there.
  test('a certificate dated five years ahead ends after 24 months', () => {
    const long = passed({ expiresOn: '2030-03-01' })
    expect(judged([long], [run('2027-03-01')]).verdict).toBe('marginal')
    expect(judged([long], [run('2027-03-02')]).verdict).toBe('fails')
  })
  test('testers of solderability are asked too; a receiving check needs no such skill', () => {
    const lotTested = (method: string) => ({
      id: 'lot-1',
      code: 'B-1',
      kind: 'bare board' as const,
      part: 'LX',
      supplier: 'Northgate',
      dateCode: '2601',
      quantity: 10,
      receivedOn: '2026-01-10',
      storage: { temperatureC: 22, relativeHumidityPct: 50, packing: 'sealed' },
      supplierResult: '',
      tests: [
        {
          id: 't1',
          method,
          testedOn: '2026-01-12',
          testedBy: 'C. Hale',
          instrumentId: null,
          conditions: {},
          readings: NO_READINGS,
        },
      ],
      disposition: null,
      usedIn: [],
    })
    const finding = judged([passed()], [run('2026-02-02')], { lots: [lotTested('rotary-dip')] })
    expect(finding.verdict).toBe('fails')
    expect(finding.found).toMatch(/C\. Hale, solderability testing: no training is recorded/)
    const checked = { lots: [lotTested('receiving-check')] }
    expect(judged([passed()], [run('2026-02-02')], checked).verdict).toBe('meets')
  })
  test('no work is undetermined', () => expect(judged([passed()], []).verdict).toBe('undetermined'))

  test('law: one more training record never makes it worse', () => {
    const order = ['meets', 'marginal', 'undetermined', 'fails']
    const day = fc.integer({ min: 0, max: 900 }).map((days) => addDays('2025-01-01', days))
    const record = fc
      .tuple(day, fc.integer({ min: 1, max: 800 }))
      .map(([passedOn, days]) => passed({ passedOn, expiresOn: addDays(passedOn, days) }))
    fc.assert(
      fc.property(
        fc.array(record, { maxLength: 4 }),
        record,
        fc.array(day, { minLength: 1, maxLength: 5 }),
        (records, more, days) => {
          const runs = days.map((one) => run(one))
          const before = judged(records, runs).verdict
          const after = judged([...records, more], runs).verdict
          expect(order.indexOf(after)).toBeLessThanOrEqual(order.indexOf(before))
        },
      ),
    )
  })
})
