import { describe, expect, test } from 'vitest'
import { calendarDate } from '@/shared/columns/calendar-date'
import { dateColumn, optionalColumn } from '@/shared/columns/column'
import { columnSchema, rowSchema } from '@/shared/columns/column-schema'
import { training } from '@/shared/records/kinds/training'

const messageFor = (schema: ReturnType<typeof columnSchema>, input: unknown): string | undefined =>
  schema.safeParse(input).error?.issues[0]?.message

// RFC 3339 section 5.7 gives the length of each month, appendix C the leap years.
describe('a date column', () => {
  const column = columnSchema(dateColumn({ label: 'Passed on' }))

  test.each(['2026-02-28', '2028-02-29', '2000-02-29', '2026-12-31'])('takes %s', (date) =>
    expect(column.safeParse(date)).toEqual({ success: true, data: date }),
  )
  test.each(['2026-02-29', '2026-02-30', '2026-04-31', '2100-02-29', '2026-13-01', '2026-00-10'])(
    'refuses %s',
    (date) => expect(messageFor(column, date)).toBe('Passed on is not a date of the calendar.'),
  )
  // A year slipped on the keys; a rule that goes month by month would go through 96,000 of them.
  test.each(['0001-01-01', '1899-12-31', '2200-01-01', '9999-12-31'])('refuses the far-off %s', (date) =>
    expect(messageFor(column, date)).toBe('Passed on lies between 1900-01-01 and 2199-12-31.'),
  )
  test.each(['1900-01-01', '2199-12-31'])('takes %s', (date) =>
    expect(column.safeParse(date).success).toBe(true),
  )
  test('says what a date looks like, and that one is wanted', () => {
    expect(messageFor(column, '30.02.2026')).toBe('Passed on must be a date such as 2026-03-31.')
    expect(messageFor(column, undefined)).toBe('Passed on must be a date.')
  })
  test('may be left empty where it is optional, but not filled with what is no date', () => {
    const schema = columnSchema(optionalColumn(dateColumn({ label: 'to' })))
    expect(schema.safeParse(undefined).success).toBe(true)
    expect(schema.safeParse('2026-02-30').success).toBe(false)
  })
})

test('a training record that passed on 30 February is refused, and one on the 28th is taken', () => {
  const record = {
    worker: 'A',
    skill: 'hand-soldering',
    passedOn: '2026-02-28',
    expiresOn: '2027-02-28',
    certificate: 'H-1',
  }
  const schema = rowSchema(training.columns)
  expect(schema.safeParse(record).success).toBe(true)
  expect(schema.safeParse({ ...record, passedOn: '2026-02-30' }).success).toBe(false)
})

test('a date given with a command is held to the same calendar', () => {
  expect(messageFor(calendarDate('The due date'), '2026-02-30')).toBe(
    'The due date is not a date of the calendar.',
  )
})
