import { describe, expect, test } from 'vitest'
import { addDays } from '@/shared/quantity/calendar'
import { heldOn, NOTICE_DAYS, type Training } from '@/shared/training/competence'
import { runningOut, trainingMatrix } from '@/shared/training/training-matrix'

/* Dates by the calendar; that an examination ends with the sooner of its stated day and the longest time is the rule trained-people's own. */

const TODAY = '2026-06-01'
const passed = (over: Partial<Training> = {}): Training => ({
  id: 'T',
  worker: 'Goran Eide',
  skill: 'rework',
  passedOn: '2026-01-10',
  expiresOn: '2027-01-09',
  certificate: 'C-1',
  ...over,
})

describe('how somebody stands in a skill', () => {
  test.each([
    ['never', [], null],
    ['current', [passed()], '2027-01-09'],
    ['runs out', [passed({ expiresOn: addDays(TODAY, NOTICE_DAYS) })], addDays(TODAY, NOTICE_DAYS)],
    ['current', [passed({ expiresOn: addDays(TODAY, NOTICE_DAYS + 1) })], addDays(TODAY, NOTICE_DAYS + 1)],
    ['runs out', [passed({ expiresOn: TODAY })], TODAY],
    ['lapsed', [passed({ expiresOn: addDays(TODAY, -1) })], '2026-05-31'],
    // Twenty-four months from the examination, whatever the certificate says.
    ['lapsed', [passed({ passedOn: '2024-05-31', expiresOn: '2030-01-01' })], '2026-05-31'],
    ['current', [passed({ expiresOn: '2026-05-01' }), passed({ expiresOn: '2027-05-01' })], '2027-05-01'],
  ] as const)('is %s', (competence, training, until) => {
    expect(heldOn(training, TODAY, 24)).toEqual({ competence, until })
  })
})

describe('the matrix', () => {
  const people = trainingMatrix(
    [
      passed(),
      passed({
        worker: ' goran  eide',
        skill: 'inspection',
        passedOn: '2026-02-01',
        expiresOn: '2026-06-20',
      }),
      passed({ worker: 'Ada Brook', expiresOn: '2026-06-10' }),
    ],
    TODAY,
    24,
  )
  test('takes names that differ in case and spacing for one person, and sorts by name', () => {
    expect(people.map(({ name }) => name)).toEqual(['Ada Brook', ' goran  eide'])
    expect(people[1]?.held.get('rework')?.competence).toBe('current')
    expect(people[1]?.held.get('cleaning')?.competence).toBe('never')
  })
  test('tells what runs out, the soonest first', () => {
    expect(runningOut(people).map(({ name, until }) => [name, until])).toEqual([
      ['Ada Brook', '2026-06-10'],
      [' goran  eide', '2026-06-20'],
    ])
  })
})
