import { expect, test, type Page } from 'playwright/test'
import { signIn } from '@/tests/browser/at-work'

/** What a value that is not there, or that nobody thought of printing, looks like in a sentence. */
const NO_WORDS = /undefined|null|NaN|\[object|\$\{/

/** The entries of the page: what stands above the fold, and whether all that was recorded is shown for want of words. */
const entriesOf = (page: Page) =>
  page.locator('.entry').evaluateAll((entries) =>
    entries.map((entry) => ({
      message: [...entry.querySelectorAll(':scope > p')].map((line) => line.textContent).join(' – '),
      isRaw: entry.querySelector('details')?.open ?? true,
    })),
  )

test('Audun reads every trail of the demo, and each entry is a sentence', async ({ page }) => {
  await signIn(page, 'audun')
  let read = 0
  for (
    let number = 1;
    number === 1 || (await page.getByRole('link', { name: 'Older entries' }).count()) > 0;
    number++
  ) {
    await page.goto(`/audit?page=${number}`)
    const entries = await entriesOf(page)
    for (const { message, isRaw } of entries) {
      expect(isRaw, message).toBe(false)
      expect(message).toMatch(/^\S.*: \S/)
      expect(message).not.toMatch(NO_WORDS)
    }
    read += entries.length
  }
  expect(read).toBeGreaterThan(150)
})

test('what an entry is about is a link to its page', async ({ page }) => {
  await signIn(page, 'audun')
  await page.goto('/programmes/LX-41/trail?what=revise-parameter')
  await page.locator('.entry a').first().click()
  await expect(page).toHaveURL(/\/programmes\/LX-41\/specification\//)
  await expect(page.getByRole('heading', { name: 'As specified' })).toBeVisible()
})
