import { createHash } from 'node:crypto'
import { expect, test } from 'playwright/test'
import { FILE_POLICY } from '@/lib/evidence/file-policy'
import { atWork, formOf, signIn } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** Codes of their own for each run, so that the stories can be told again to the same installation. */
const RUN = Date.now().toString(36).toUpperCase()

// OWASP ASVS 5.0.0 V3.2.1 and V3.4.6; what counts is the answer as the browser gets it.
test('evidence is served so that a browser saves it and runs nothing of it', async ({ page }) => {
  await signIn(page, 'ines')
  await page.goto('/programmes/LX-41/items/holes-and-lands#evidence')
  const link = page.getByRole('link', { name: 'LX-41-drill-chart.txt' })
  const file = await page.request.get((await link.getAttribute('href')) ?? '')
  expect(file.status()).toBe(200)
  expect(file.headers()).toMatchObject({
    'content-security-policy': FILE_POLICY,
    'x-content-type-options': 'nosniff',
    'x-frame-options': 'DENY',
    'cross-origin-resource-policy': 'same-origin',
  })
  expect(file.headers()['content-disposition']).toMatch(/^attachment; filename="?LX-41-drill-chart\.txt"?$/)
  const sheet = await page.request.get('/programmes/LX-41')
  expect(sheet.headers()['content-security-policy']).toContain("frame-ancestors 'none'")
  expect(sheet.headers()['content-security-policy']).not.toContain('sandbox')
})

// RFC 9110, sections 15.5.4 (403) and 15.5.5 (404).
test('a page that is not for the person says so, and answers 403; what is not there answers 404', async ({
  browser,
}) => {
  const ines = await atWork(browser, 'ines')
  const adela = await atWork(browser, 'adela')
  const audun = await atWork(browser, 'audun')
  for (const [page, address, message] of [
    [ines, '/people', 'Only an administrator may do this.'],
    [ines, '/administration', 'an auditor may read it'],
    [adela, '/programmes/LX-41', 'Its lead can invite you.'],
    [adela, '/programmes/LX-41/trail', 'Its lead can invite you.'],
    [adela, '/audit', 'An administrator reads no programme.'],
    [adela, '/lessons', 'An administrator takes no part'],
    [audun, '/programmes/new', 'neither of them opens a programme'],
    [audun, '/programmes/LX-41/items/new', 'quality may do this.'],
  ] as const) {
    const answer = await page.goto(address)
    expect(answer?.status(), address).toBe(403)
    await expect(page.getByRole('heading', { level: 1 }), address).toHaveText('This sheet is not open to you')
    await expect(page.locator('main'), address).toContainText(message)
  }
  expect((await ines.goto('/programmes/NOT-THERE'))?.status()).toBe(404)
  expect((await ines.goto('/programmes/LX-41'))?.status()).toBe(200)
})

test('who knows the hash of another programme’s file sees nothing of it', async ({ browser }) => {
  const secret = `at,density\n2026-03-01T08:00:00Z,0.8${Math.floor(Math.random() * 1e9)}\n`
  const sha256 = createHash('sha256').update(secret).digest('hex')
  const ines = await atWork(browser, 'ines')
  const programme = new ProgrammeAtWork(`LI-${RUN}`)
  await programme.begin(ines, 'Board for files')
  await programme.attachFile(ines, 'laminate', 'certificate', 'readings.csv', secret)
  // Goran may import into any log of the works, and belongs to no programme of this story.
  const goran = await atWork(browser, 'goran')
  await goran.goto('/works')
  const log = await goran.locator('a[href*="/logs/"]').first().getAttribute('href')
  const answer = await goran.goto(`${log}/import?file=${sha256}`)
  expect(answer?.status()).toBe(404)
  await expect(goran.getByRole('heading', { level: 1 })).toHaveText('There is no such file')
  expect(await goran.content()).not.toContain(secret.split('\n')[1])
})

test('a form that is too large is not sent, says so, and keeps what was typed', async ({ page }) => {
  await signIn(page, 'ines')
  await page.goto('/programmes/new')
  const form = formOf(page, 'The programme')
  const title = form.locator('[name="title"]')
  const long = 'x'.repeat(2.5 * 1024 * 1024)
  await title.evaluate((box, text) => {
    box.removeAttribute('maxlength')
    ;(box as HTMLInputElement).value = text
  }, long)
  let sent = 0
  page.on('request', (request) => (sent += request.method() === 'POST' ? 1 : 0))
  await form.getByRole('button', { name: 'Open the programme' }).click()
  await expect(form.getByRole('alert').first()).toContainText('one may take 2 MB')
  expect(await title.inputValue()).toHaveLength(long.length)
  expect(sent).toBe(0)
})
