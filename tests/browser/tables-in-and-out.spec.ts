import { readFileSync } from 'node:fs'
import { expect, test } from 'playwright/test'
import writeXlsxFile from 'write-excel-file/node'
import { readWorkbook } from '@/lib/spreadsheets/read-workbook'
import { itemHolding } from '@/shared/catalogue/standard-plan'
import { atWork, csvFile, formOf, send, unfold } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'
import { WorksAtWork } from '@/tests/browser/works-at-work'

const RUN = Date.now().toString(36).slice(-5).toUpperCase()

/** A code of its own, so that the story can be told again on the same database. */
const CODE = `TB-${Date.now() % 1_000_000}`
const programme = new ProgrammeAtWork(CODE)
const PARAMETER = 'component-places'
const ITEM = `/items/${itemHolding.parameter(PARAMETER)?.key}`
const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'

test('Ines takes a table out, changes it in a spreadsheet and loads it again; Petra imports another works’ readings', async ({
  browser,
}) => {
  test.setTimeout(8 * 60_000)
  const ines = await atWork(browser, 'ines')
  const petra = await atWork(browser, 'petra')
  const form = formOf(ines, 'Revise Where components stand')
  const box = (name: string) => form.locator(`[name="value.${name}"]`)

  await test.step('Ines pastes rows with a decimal comma, sees them in the boxes, and saves them', async () => {
    await programme.begin(ines, 'Flow switch')
    await programme.open(ines, ITEM)
    await unfold(form.locator('[name="reason"]'))
    await form.getByText('Paste or load rows').click()
    await form
      .getByLabel('Rows copied from a spreadsheet')
      .fill(
        'Component\tRow of joints\tMiddle, across the plan, mm\nT1\tAlong the travel\t0,813\nT2\tacross\t12,5',
      )
    await form.getByRole('button', { name: 'Read the rows' }).click()
    await form.getByRole('button', { name: 'Put 2 rows in place of those here' }).click()
    await expect(box('0.component')).toHaveValue('T1')
    await expect(box('0.row')).toHaveValue('along')
    await expect(box('0.xMm')).toHaveValue(/^0[.,]813$/)
    await form.locator('[name="reason"]').fill('As placed.')
    await send(ines, form.getByRole('button', { name: /^Save as revision/ }))
  })

  await test.step('she takes the table along as XLSX: numbers are numbers', async () => {
    await programme.open(ines, `/specification/${PARAMETER}`)
    const download = ines.waitForEvent('download')
    await ines.getByRole('link', { name: /^XLSX/ }).click()
    const rows = await readWorkbook(readFileSync(await (await download).path()))
    expect(rows.slice(1).map((row) => row.slice(0, 3))).toEqual([
      ['T1', 'Along the travel', 0.813],
      ['T2', 'Across the travel', 12.5],
    ])
    rows[2]![2] = 14.25
    rows.push(['T3', 'somewhere', 1.234, ''])
    const changed = await writeXlsxFile(rows.map((row) => row.map((cell) => cell || null))).toBuffer()
    await programme.open(ines, ITEM)
    await unfold(form.locator('[name="reason"]'))
    await form.getByText('Paste or load rows').click()
    await form
      .getByLabel('Or a CSV or XLSX file')
      .setInputFiles({ name: 'places.xlsx', mimeType: XLSX, buffer: changed })
  })

  await test.step('what cannot stand in a box is named with line and column; the rest is filled in and saved', async () => {
    await form.getByRole('button', { name: 'Read the rows' }).click()
    await expect(form.getByText('Line 4, column 2 (Row of joints): “somewhere”')).toBeVisible()
    await form.getByRole('button', { name: 'Put 3 rows in place of those here' }).click()
    await expect(box('1.xMm')).toHaveValue(/^14[.,]25$/)
    await expect(box('2.xMm')).toHaveValue(/^1[.,]234$/)
    await box('2.row').selectOption('neither')
    await form.locator('[name="reason"]').fill('T2 moved, T3 added.')
    await send(ines, form.getByRole('button', { name: /^Save as revision/ }))
    await programme.open(ines, `/specification/${PARAMETER}`)
    await expect(ines.getByText('14.25').first()).toBeVisible()
  })

  await test.step('Petra imports readings whose date and time stand in two columns, by the clock of New York', async () => {
    const works = new WorksAtWork(`Line ${RUN}`)
    await works.openLine(petra, 'A line for tables')
    await works.openMachine(petra, `Fluxer ${RUN}`, 'fluxer')
    await works.openLog(petra, `Fluxer ${RUN}`, {
      code: `FLUX ${RUN}`,
      characteristic: 'flux-density',
      instrument: null,
    })
    await works.open(petra, `Fluxer ${RUN}`, `FLUX ${RUN}`)
    await petra
      .locator('input[type="file"][name="file"]')
      .setInputFiles(
        csvFile(
          'flux.csv',
          'Date;Time;Density as read;Flux temperature\n11/02/2026;08:00;0,813;21,5\n11/02/2026;09:00;0,814;21,5\n',
        ),
      )
    await petra.getByRole('button', { name: 'Preview the file' }).click()
    await petra.waitForURL(/\/import/)
    await petra.getByLabel('Dates are written').selectOption('month first')
    await petra.getByLabel('Times without a zone are by the clock of').fill('America/New_York')
    await petra.getByRole('button', { name: 'Read it again so' }).click()
    await expect(petra.getByLabel('Decimal sign')).toHaveValue(',')
    await expect(petra.locator('[name="map.at"]')).toHaveValue('Date')
    await expect(petra.locator('[name="map.at.time"]')).toHaveValue('Time')
    await petra.getByRole('button', { name: 'Import 2 readings' }).click()
    await petra.waitForURL((address) =>
      address.pathname.endsWith(`/logs/${encodeURIComponent(`FLUX ${RUN}`)}`),
    )
  })

  // IANA time zone database: on 2 November 2026 New York is five hours behind UTC (rule US ended the day before), Berlin one ahead.
  await test.step('the log shows them by the clock of the works, which it names', async () => {
    const zone = await petra.getByText(/^Times by the clock of/).innerText()
    const shown = zone.includes('Berlin') ? '2026-11-02 15:00' : '2026-11-02 14:00'
    await expect(petra.getByText(shown).filter({ visible: true }).first()).toBeVisible()
  })
})
