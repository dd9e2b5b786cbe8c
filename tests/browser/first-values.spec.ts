import { expect, test } from 'playwright/test'
import { atWork, enter, formOf, send } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

const CODE = `FV-${Date.now().toString(36).toUpperCase()}`

test('Tomas, with a phone, goes from a new programme’s route card to its first finding that meets', async ({
  browser,
}) => {
  const page = await atWork(browser, 'tomas')
  await page.setViewportSize({ width: 390, height: 844 })
  await new ProgrammeAtWork(CODE).begin(page, 'Level switch, bare board')
  await page.goto(`/programmes/${CODE}`)

  await test.step('the route card leads to the first values', async () => {
    await page.getByRole('link', { name: 'State the first values' }).click()
    await page.waitForURL(`**/programmes/${CODE}/start`)
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
    expect(wide, 'the sheet is no wider than the phone').toBeLessThanOrEqual(0)
  })

  await test.step('one value, one box; saved, it is ticked and the sheet goes on to the next', async () => {
    const form = formOf(page, 'Revise Bow and twist allowed')
    await form.locator('summary').first().click()
    await enter(form.locator('[name="value"]'), 0.5)
    await send(page, form.getByRole('button', { name: 'Save as revision 1' }))
    await page.waitForURL(`**/programmes/${CODE}/start#**`)
    await expect(page.locator('#bow-and-twist')).toHaveAttribute('data-stated', 'true')
    await expect(page.locator('#bow-and-twist')).toContainText('0.5 %')
  })

  await test.step('what it opened is judged, and meets', async () => {
    const opened = page.locator('#bow-and-twist').getByRole('listitem').first()
    await expect(opened).toContainText('meets')
    await opened.getByRole('link').first().click()
    await page.waitForURL(`**/programmes/${CODE}/findings/bow-and-twist`)
    await expect(page.getByRole('main')).toContainText('meets')
    await page.goto(`/programmes/${CODE}/margins`)
    await expect(page.locator('[data-rule="bow-and-twist"]')).toBeAttached()
  })
})
