import { expect, test } from 'vitest'
import { detectForm } from '@/lib/readings/file-form'
import { parseReadings } from '@/lib/readings/parse-readings'
import { INSTANT_FIELD, TIME_OF_DAY_FIELD, type ReadingField } from '@/lib/readings/reading-field'
import { NEUTRAL_WORKS, type Works } from '@/shared/quantity/works'

const BERLIN: Works = { timeZone: 'Europe/Berlin', notation: { decimal: ',', dates: 'day first' } }
const NEW_YORK: Works = { timeZone: 'America/New_York', notation: { decimal: '.', dates: 'month first' } }
const DENSITY: ReadingField = { name: 'density', label: 'Density', kind: 'number', required: true }
const FIELDS = [INSTANT_FIELD, TIME_OF_DAY_FIELD, DENSITY]

const read = (text: string, works: Works) => parseReadings(Buffer.from(text), FIELDS, { works })
const messagesOf = async (text: string, works: Works): Promise<string[]> => {
  const parsed = await read(text, works)
  return parsed.ok ? [] : parsed.errors.map(({ message }) => message)
}

test('date and time of day in columns of their own are read together, by the clock of the works', async () => {
  const parsed = await read('Date;Time;Density\n31.12.2026;08:15;0,813\n31.12.2026;08:30:30;0,814\n', BERLIN)
  expect(parsed).toMatchObject({
    ok: true,
    mapping: { at: 'Date', 'at.time': 'Time' },
    readings: {
      // In winter one hour behind the clock of Berlin (IANA time zone database, Europe/Berlin).
      columns: {
        at: [Date.UTC(2026, 11, 31, 7, 15), Date.UTC(2026, 11, 31, 7, 30, 30)],
        density: [0.813, 0.814],
      },
    },
  })
})

/*
 * IANA time zone database: rule EU, clocks forward at 01:00 UTC on the last Sunday of March and back on that of
 * October; rule US, at 02:00 local time on the second Sunday of March and the first of November. 29 March, 25 October,
 * 8 March and 1 November 2026.
 */
test.each([
  [BERLIN, '29.03.2026 02:30', 'There is no 2026-03-29 02:30 in Europe/Berlin'],
  [BERLIN, '25.10.2026 02:30', '2026-10-25 02:30 comes twice in Europe/Berlin'],
  [NEW_YORK, '03/08/2026 02:30', 'There is no 2026-03-08 02:30 in America/New_York'],
  [NEW_YORK, '11/01/2026 01:30', '2026-11-01 01:30 comes twice in America/New_York'],
])('by the clock of %o, %s is no one time', async (works, time, why) => {
  const [message] = await messagesOf(`Time\tDensity\n${time}\t${works === BERLIN ? '0,8' : '0.8'}\n`, works)
  expect(message).toContain(why)
  expect(message).toMatch(/^Line 2, column 1/)
})

test.each([
  [BERLIN, '29.03.2026 01:59', Date.UTC(2026, 2, 29, 0, 59)],
  [BERLIN, '29.03.2026 03:00', Date.UTC(2026, 2, 29, 1, 0)],
  [NEW_YORK, '11/01/2026 00:59', Date.UTC(2026, 10, 1, 4, 59)],
  [NEW_YORK, '11/01/2026 02:00', Date.UTC(2026, 10, 1, 7, 0)],
  [NEW_YORK, '2026-11-01T01:30:00-05:00', Date.UTC(2026, 10, 1, 6, 30)],
])('by the clock of %o, %s is one', async (works, time, instant) => {
  const parsed = await read(`Time\tDensity\n${time}\t${works === BERLIN ? '0,8' : '0.8'}\n`, works)
  expect(parsed).toMatchObject({ ok: true, readings: { columns: { at: [instant] } } })
})

test('readings that follow one another over a change are each read by themselves', async () => {
  const lines = ['01:58', '01:59', '03:00', '03:01'].map((time) => `29.03.2026 ${time};0,8`)
  const parsed = await read(`Time;Density\n${lines.join('\n')}\n`, BERLIN)
  const first = Date.UTC(2026, 2, 29, 0, 58)
  expect(parsed).toMatchObject({
    readings: { columns: { at: [0, 1, 2, 3].map((minutes) => first + minutes * 60_000) } },
  })
})

test('a year of two digits, and a number that could be two, are refused with line and column', async () => {
  expect(await messagesOf('Time;Density\n31.12.26 08:00;0,8\n31.12.2026 08:00;1.234\n', BERLIN)).toEqual([
    'Line 2, column 1 (Time): found "31.12.26 08:00", expected was a year of four digits.',
    'Line 3, column 2 (Density): found "1.234", expected was a number that can be read one way only, without a sign between thousands.',
  ])
})

test.each([
  ['a;b\n1;2\n', NEUTRAL_WORKS, ';', ','],
  ['a;b\n1;0.25\n', BERLIN, ';', '.'],
  ['a\tb\n1\t2\n', BERLIN, '\t', ','],
  ['a\tb\n1\t1,234\n', NEUTRAL_WORKS, '\t', '.'],
  ['a,b\n1,25\n', BERLIN, ',', '.'],
])('%j is parted and written as it shows, else as the works writes', (head, works, delimiter, decimal) => {
  expect(detectForm(head, works)).toMatchObject({ delimiter, decimal, timeZone: works.timeZone })
})
