import type { Page } from 'playwright/test'
import type { LotStory, LotTestStory } from '@/seed/level-transmitter/lot-story'
import { csvOf } from '@/seed/readings'
import { csvFile, enterAll, formOf, send } from '@/tests/browser/at-work'
import { chooseCsv, confirmImport } from '@/tests/browser/csv-import'

const supplierAddress = (supplier: string): string => `/works/suppliers/${encodeURIComponent(supplier)}`
const lotAddress = (supplier: string, lot: string): string =>
  `${supplierAddress(supplier)}/lots/${encodeURIComponent(lot)}`

/** Adds a supplier of the works, where the works do not have it yet. */
export async function addSupplier(page: Page, name: string): Promise<void> {
  await page.goto('/works/suppliers')
  const form = formOf(page, 'Add a supplier')
  await form.getByLabel('Name').fill(name)
  await send(page, form.getByRole('button', { name: 'Add the supplier' }))
}

/** Receives a lot today that was made a fortnight ago. */
export async function receiveLot(
  page: Page,
  { tests: _, supplier, ...lot }: LotStory,
  today: string,
): Promise<void> {
  await page.goto(supplierAddress(supplier))
  const form = formOf(page, 'Receive a lot')
  await enterAll(form, '', {
    ...lot,
    dateCode: dateCodeOf(Date.parse(today) - 14 * DAY_MS),
    receivedOn: today,
    temperatureC: 22,
    relativeHumidityPct: 42,
    packing: 'sealed, with desiccant',
  })
  await send(page, form.getByRole('button', { name: 'Receive the lot' }))
}

/** Opens a lot, with the form of a test if one is named. */
export async function openLot(
  page: Page,
  { supplier, code }: Pick<LotStory, 'supplier' | 'code'>,
  asked = '',
): Promise<void> {
  await page.goto(`${lotAddress(supplier, code)}${asked}`)
}

/** Records a test from the file the tester wrote. */
export async function testLot(
  page: Page,
  lot: LotStory,
  test: LotTestStory,
  instruments: Readonly<Record<string, string>>,
): Promise<void> {
  await openLot(page, lot, `?method=${test.method}`)
  await chooseCsv(page, csvFile(`${lot.code}-${test.method}.csv`, csvOf(test.rows)))
  const form = formOf(page, 'Record the test')
  await enterAll(form, 'conditions.', test.conditions)
  if (test.instrument)
    await form.locator('[name="instrument"]').selectOption(instruments[test.instrument] ?? '')
  await confirmImport(page)
}

/** Accepts a lot for what its tests showed. */
export async function acceptLot(page: Page, lot: LotStory): Promise<void> {
  await openLot(page, lot)
  const decide = formOf(page, 'Disposition of the lot')
  await decide.getByRole('radio', { name: 'accept' }).check()
  await decide.locator('[name="reason"]').fill('Every finding on the lot meets.')
  await send(page, decide.getByRole('button', { name: 'Record disposition' }))
}

/** Allocates a whole lot to a programme, whatever else of its part lies in the store. */
export async function allocateLot(
  page: Page,
  lot: Pick<LotStory, 'supplier' | 'code' | 'quantity'>,
  programme: string,
): Promise<void> {
  await openLot(page, lot)
  const form = formOf(page, 'Allocate pieces of the lot')
  await enterAll(form, '', {
    to: programme,
    quantity: lot.quantity,
    outOfOrder: 'Bought for this programme.',
  })
  await send(page, form.getByRole('button', { name: 'Allocate' }))
}

const DAY_MS = 86_400_000

/** Year and week of ISO 8601 in four figures, as a maker stamps them. */
function dateCodeOf(instant: number): string {
  const weekday = (new Date(instant).getUTCDay() + 6) % 7
  const thursday = new Date(instant + (3 - weekday) * DAY_MS)
  const year = thursday.getUTCFullYear()
  const week = 1 + Math.floor((thursday.getTime() - Date.UTC(year, 0, 1)) / (7 * DAY_MS))
  return `${year % 100}${String(week).padStart(2, '0')}`
}
