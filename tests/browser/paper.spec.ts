import { expect, test, type Page } from 'playwright/test'
import { atWork } from '@/tests/browser/at-work'

/** How many sheets of A4 the page takes, by the page objects of the PDF (ISO 32000-1, 7.7.3.3). */
async function sheetsOf(page: Page): Promise<number> {
  const pdf = await page.pdf({ preferCSSPageSize: true })
  return (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length
}

test('an item with two dozen holes takes few sheets', async ({ browser }) => {
  const ines = await atWork(browser, 'ines')
  await ines.goto('/programmes/LX-41/items/holes-and-lands')
  expect(await sheetsOf(ines)).toBeLessThanOrEqual(5)
})

test('the pack begins with its contents and summary, and every line of the contents leads to its place', async ({
  browser,
}) => {
  const ines = await atWork(browser, 'ines')
  await ines.goto('/programmes/LX-41/print')
  const contents = ines.locator('section', { has: ines.getByRole('heading', { name: 'Contents' }) }).last()
  const places = await contents
    .getByRole('link')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''))
  expect(places.length).toBeGreaterThan(30)
  const missing = await ines.evaluate(
    (targets) => targets.filter((target) => !document.querySelector(target)),
    places,
  )
  expect(missing).toEqual([])
  const headings = await ines.getByRole('heading', { level: 2 }).allInnerTexts()
  expect(headings.indexOf('Contents')).toBeLessThan(headings.findIndex((one) => /signatures/i.test(one)))
})
