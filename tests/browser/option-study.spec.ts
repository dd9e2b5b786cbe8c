import { expect, test } from 'playwright/test'
import { signIn } from '@/tests/browser/at-work'

test('before scripts load the number of alternatives grows, and what was typed stays', async ({
  browser,
}) => {
  const page = await (await browser.newContext({ javaScriptEnabled: false })).newPage()
  await signIn(page, 'ines')
  await page.goto('/programmes/LX-41/options/new')
  await page.getByLabel('Item').selectOption('board-finish')
  await page.getByLabel('Alternatives').selectOption('3')
  await page.getByRole('button', { name: 'Go on' }).click()
  await page.locator('[name="alternatives.2.name"]').fill('The third')
  await page.getByRole('button', { name: 'One more alternative' }).click()
  await expect(page.locator('[name="alternatives.3.name"]')).toBeVisible()
  await expect(page.locator('[name="alternatives.2.name"]')).toHaveValue('The third')
  await page.getByRole('button', { name: 'Without the last' }).click()
  await expect(page.locator('[name="alternatives.3.name"]')).toHaveCount(0)
  await page.getByRole('button', { name: 'Lay them side by side' }).click()
  await expect(page.getByText('The question must be filled in.').first()).toBeVisible()
  await expect(page.locator('[name="alternatives.2.name"]')).toHaveValue('The third')
})
