import type { Page } from 'playwright/test'
import { formOf, type csvFile } from '@/tests/browser/at-work'

/** Sends a CSV text to be looked at before it is imported. */
export async function chooseCsv(page: Page, file: ReturnType<typeof csvFile>): Promise<void> {
  const form = formOf(page, 'Import a CSV file')
  await form.locator('[name="file"]').setInputFiles(file)
  await form.getByRole('button', { name: 'Preview the file' }).click()
  await page.waitForURL(/\/import\?/)
}

export async function confirmImport(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Import \d+ readings$/ }).click()
  await page.waitForURL((address) => !address.pathname.endsWith('/import'))
}
