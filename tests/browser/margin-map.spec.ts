import { expect, test, type Page } from 'playwright/test'
import { atWork } from '@/tests/browser/at-work'

const map = (page: Page) => page.getByRole('group', { name: /^Margins/ })
const placeOfTick = (page: Page, rule: string) =>
  page.locator(`[data-rule="${rule}"]`).evaluate((tick) => (tick as HTMLElement).style.insetInlineStart)

test('Ines sees what is nearest to its limit, and what a hotter board would turn and undo', async ({
  browser,
}) => {
  const page = await atWork(browser, 'ines')
  await page.goto('/programmes/LX-41/margins')

  await test.step('the map is one stop of the Tab key; arrows go from the nearest on', async () => {
    const ticks = map(page).getByRole('link')
    expect(await ticks.count()).toBeGreaterThan(40)
    expect(await map(page).locator('a[tabindex="0"]').count()).toBe(1)
    await map(page).locator('a[tabindex="0"]').focus()
    const told = page.locator('.margin-told')
    const nearest = await told.getByRole('heading').innerText()
    await expect(async () => {
      await page.keyboard.press('ArrowRight')
      await expect(told.getByRole('heading')).not.toHaveText(nearest, { timeout: 1000 })
    }).toPass()
    await page.keyboard.press('Home')
    await expect(told.getByRole('heading')).toHaveText(nearest)
    expect(await map(page).locator('a[tabindex="0"]').count()).toBe(1)
  })

  await test.step('the table says the same numbers, the nearest first', async () => {
    const rows = page.getByRole('table', { name: 'Margins' }).getByRole('row')
    expect(await rows.count()).toBe((await map(page).getByRole('link').count()) + 1)
  })

  await test.step('another temperature moves the tick, turns findings and names the signatures', async () => {
    const before = await placeOfTick(page, 'glass-transition')
    await page.getByLabel('Specified value').selectOption('service-temperature')
    await page.getByLabel(/^Try/).fill('150')
    const told = page.getByRole('status').filter({ hasText: 'Approvals that lapse' })
    await expect(told).toContainText('fails')
    await expect(told).toContainText('Quill Amaro')
    expect(parseFloat(await placeOfTick(page, 'glass-transition'))).toBeLessThan(parseFloat(before))
    await expect(page.locator('[data-rule="glass-transition"]')).toHaveAttribute('data-moved', 'true')
  })

  await test.step('the slider does the same by keys', async () => {
    const slider = page.getByRole('slider')
    await slider.focus()
    const at = await page.getByLabel(/^Try/).inputValue()
    await page.keyboard.press('ArrowLeft')
    await expect(page.getByLabel(/^Try/)).not.toHaveValue(at)
  })

  await test.step('nothing is saved; the link leads to the form with the value in it', async () => {
    await page.getByLabel(/^Try/).fill('120')
    await page.getByRole('link', { name: /^Revise Board temperature/ }).click()
    await page.waitForURL('**/items/**revise=service-temperature**')
    await expect(page.locator('#service-temperature').locator('[name="value"]')).toHaveValue('120')
  })
})
