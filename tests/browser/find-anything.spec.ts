import { expect, test, type Page } from 'playwright/test'
import { atWork } from '@/tests/browser/at-work'

const box = (page: Page) => page.getByRole('combobox', { name: 'Find anything' })
const marked = (page: Page) => page.getByRole('listbox').getByRole('option', { selected: true })

/** Presses a key until it is taken: scripts may still be on their way. */
async function pressUntilOpen(page: Page, key: string): Promise<void> {
  await expect(async () => {
    await page.keyboard.press(key)
    await expect(box(page)).toBeFocused({ timeout: 2000 })
  }).toPass()
}

test('Quill goes from anywhere to a lot and to a value by keys alone', async ({ browser }) => {
  const page = await atWork(browser, 'quill')
  await page.goto('/programmes/LX-41')

  await test.step('a stroke opens the box; the number of a lot leads to the lot', async () => {
    await pressUntilOpen(page, '/')
    await page.keyboard.type('b-2609')
    await expect(page.getByRole('status').filter({ hasText: /match/ })).toContainText(/^\d+ match/)
    await expect(marked(page)).toContainText('B-2609')
    await page.keyboard.press('Enter')
    await page.waitForURL('**/programmes/LX-41/lots/B-2609')
  })

  await test.step('arrows go along the matches; what lies in this programme comes first', async () => {
    await pressUntilOpen(page, 'Control+k')
    await page.keyboard.type('FLÚX')
    await expect(marked(page)).toContainText('LX-41')
    const first = await marked(page).innerText()
    await page.keyboard.press('ArrowDown')
    await expect(marked(page)).not.toHaveText(first)
    await page.keyboard.press('ArrowUp')
    await expect(marked(page)).toContainText(first.split('\n')[0] ?? '')
  })

  await test.step('Escape closes it and leaves the page as it was', async () => {
    await page.keyboard.press('Escape')
    await expect(box(page)).toBeHidden()
    expect(new URL(page.url()).pathname).toBe('/programmes/LX-41/lots/B-2609')
  })

  await test.step('typed into a field a stroke is a stroke; the list of keys turns them off', async () => {
    await page.goto('/programmes')
    const search = page.getByRole('searchbox').first()
    await search.fill('a/?')
    await search.press('/')
    await expect(search).toHaveValue('a/?/')
    await expect(box(page)).toBeHidden()
    await page.getByRole('heading', { level: 1 }).click()
    const keys = page.getByRole('dialog', { name: 'Keys' })
    await expect(async () => {
      await page.keyboard.press('?')
      await expect(keys).toBeVisible({ timeout: 2000 })
    }).toPass()
    await keys.getByRole('checkbox').uncheck()
    await page.keyboard.press('Escape')
    await page.keyboard.press('/')
    await expect(box(page)).toBeHidden()
    await page.keyboard.press('Control+k')
    await expect(box(page)).toBeFocused()
  })
})

test('Adela, who reads no programme, finds people and none of its things', async ({ browser }) => {
  const page = await atWork(browser, 'adela')
  await page.goto('/find?q=LX-41')
  await expect(page.getByText(/Nothing that you may read/)).toBeVisible()
  await page.goto('/find?q=quill')
  await expect(page.getByRole('main').getByRole('link', { name: 'Quill Amaro' }).first()).toBeVisible()
})

test('without scripts the link leads to a page that finds the same', async ({ browser }) => {
  const withScripts = await atWork(browser, 'tomas')
  const context = await browser.newContext({
    javaScriptEnabled: false,
    storageState: await withScripts.context().storageState(),
  })
  const page = await context.newPage()
  await page.goto('/programmes/LX-41')
  await page.getByRole('link', { name: 'Find', exact: true }).click()
  await page.getByRole('searchbox').fill('contact angle')
  await page.getByRole('button', { name: 'Find' }).click()
  await page.getByRole('link', { name: 'Contact angle to design for' }).click()
  await page.waitForURL('**/programmes/LX-41/specification/contact-angle')
})
