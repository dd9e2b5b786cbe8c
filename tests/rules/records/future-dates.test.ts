import { expect, test } from 'vitest'
import { RECORD_KINDS } from '@/shared/records/record-kinds'
import { futureDates } from '@/shared/records/future-dates'

const today = '2026-03-02'

test('a day to come is named, today and the past are not', () => {
  const { columns } = RECORD_KINDS['soldering-run']
  expect(futureDates(columns, { doneOn: '2026-03-03' }, today)).toEqual(['doneOn'])
  expect(futureDates(columns, { doneOn: '2026-03-02' }, today)).toEqual([])
  expect(futureDates(columns, { doneOn: '1999-12-31' }, today)).toEqual([])
})
test('what is due may lie ahead, what happened may not', () => {
  const ahead = {
    calibratedOn: '2027-01-01',
    dueOn: '2028-01-01',
    passedOn: '2027-01-01',
    expiresOn: '2028-01-01',
  }
  expect(futureDates(RECORD_KINDS.calibration.columns, ahead, today)).toEqual(['calibratedOn'])
  expect(futureDates(RECORD_KINDS.training.columns, ahead, today)).toEqual(['passedOn'])
})
test('every kind of record has a day that may not lie ahead', () => {
  const without = Object.values(RECORD_KINDS).filter(({ columns }) => {
    const row = Object.fromEntries(Object.keys(columns).map((name) => [name, '9999-12-31']))
    return futureDates(columns, row, today).length === 0
  })
  expect(without.map(({ key }) => key)).toEqual(['gauge-reading'])
})
