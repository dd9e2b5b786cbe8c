import { strFromU8, unzipSync } from 'fflate'
import { expect, test } from 'vitest'
import { declaredColumns, exportTable, instantOf } from '@/lib/exports/tables/export-table'
import { tableAsCsv } from '@/lib/exports/tables/table-as-csv'
import { tableAsXlsx } from '@/lib/exports/tables/table-as-xlsx'
import { readWorkbook } from '@/lib/spreadsheets/read-workbook'
import { workbookAsText, workbookRows } from '@/lib/spreadsheets/workbook-in-thread'
import { dateColumn, flagColumn, numberColumn, optionalColumn, textColumn } from '@/shared/columns/column'
import { NEUTRAL_WORKS } from '@/shared/quantity/works'

const COLUMNS = {
  name: textColumn({ label: 'Name' }),
  holeMm: optionalColumn(numberColumn({ label: 'Hole', unit: 'mm', min: 0, max: 10 })),
  day: optionalColumn(dateColumn({ label: 'Day' })),
  plated: optionalColumn(flagColumn({ label: 'Plated' })),
}
const GERMAN = { timeZone: 'Europe/Berlin', notation: { decimal: ',', dates: 'day first' } } as const
const table = exportTable(
  'holes',
  [
    ...declaredColumns(COLUMNS),
    instantOf('Read', (row: Readonly<Record<string, unknown>>) => row['at'] as number),
  ],
  [
    { name: '=1+1', holeMm: 0.813, day: '2026-12-31', plated: true, at: Date.UTC(2026, 6, 1, 10, 0) },
    { name: 'A;B', at: Date.UTC(2026, 11, 1, 10, 0) },
  ],
)

const csvOf = async (works: Parameters<typeof tableAsCsv>[1]): Promise<string> => {
  let text = ''
  for await (const piece of tableAsCsv(table, works)) text += piece
  return text
}

test('a table as CSV: numbers as numbers, no text that a spreadsheet takes for a formula', async () => {
  expect((await csvOf(NEUTRAL_WORKS)).split('\r\n')).toEqual([
    'Name,"Hole, mm",Day,Plated,Read (UTC)',
    `"'=1+1",0.813,2026-12-31,yes,2026-07-01 10:00:00`,
    '"A;B",,,,2026-12-01 10:00:00',
    '',
  ])
})

// In summer the clocks of Berlin are two hours ahead of UTC, in winter one (IANA time zone database, Europe/Berlin, rule EU).
test('in a locale with a decimal comma, and by the clock of its works', async () => {
  expect((await csvOf(GERMAN)).split('\r\n').slice(1, 3)).toEqual([
    `"'=1+1";0,813;2026-12-31;yes;2026-07-01 12:00:00`,
    '"A;B";;;;2026-12-01 11:00:00',
  ])
})

test('a workbook is read back as it was written', async () => {
  expect(await readWorkbook(await tableAsXlsx(table, GERMAN))).toEqual([
    ['Name', 'Hole, mm', 'Day', 'Plated', 'Read (Europe/Berlin)'],
    ['=1+1', 0.813, '2026-12-31', 'yes', '2026-07-01 12:00:00'],
    ['A;B', '', '', '', '2026-12-01 11:00:00'],
  ])
})

// ECMA-376 part 1, 18.3.1.4 and 18.17.4: a formula stands in an element f; a number in v, and a day as days from 1900.
test('its parts hold a typed number and day, and no formula', async () => {
  const parts = unzipSync(await tableAsXlsx(table, NEUTRAL_WORKS))
  const sheet = strFromU8(parts['xl/worksheets/sheet1.xml']!)
  expect(sheet).not.toMatch(/<f[ >]/)
  expect(sheet).toMatch(/<v>0\.813<\/v>/)
  // 31 December 2026 is day 46387: 43831 is 1 January 2020 (from memory), and 2556 days follow.
  expect(sheet).toMatch(/<v>46387<\/v>/)
})

test('a workbook is read in a thread of its own, and its numbers told with the sign that is asked for', async () => {
  const workbook = await tableAsXlsx(table, NEUTRAL_WORKS)
  expect((await workbookRows(workbook))[1]?.[1]).toBe(0.813)
  expect((await workbookAsText(workbook, ',')).toString().split('\n')[1]).toBe(
    '=1+1\t0,813\t2026-12-31\tyes\t2026-07-01 10:00:00',
  )
})

test('what is no workbook, or unpacks to more than is read, is refused', async () => {
  await expect(readWorkbook(Buffer.from('PK nothing'))).rejects.toThrow('no XLSX workbook')
  const workbook = await tableAsXlsx(table, NEUTRAL_WORKS)
  await expect(readWorkbook(workbook, { parts: 1000, unpackedBytes: 1000, cells: 10 })).rejects.toThrow(
    'unpacks to more than',
  )
  await expect(readWorkbook(workbook, { parts: 1000, unpackedBytes: 1e8, cells: 3 })).rejects.toThrow(
    'more than 3 cells',
  )
})
