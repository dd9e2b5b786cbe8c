import { expect, test, type Page } from 'playwright/test'
import { atWork, csvFile, enterAll, formOf, send, signIn, unfold } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** Codes of their own for each run, so that the stories can be told again to the same installation. */
const RUN = Date.now().toString(36).toUpperCase()
const MEBIBYTE = 1024 * 1024
/** The first bytes of every PNG picture (ISO/IEC 15948, 5.2), and some more. */
const PNG = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52])

/** Opens a programme that the story may spoil. */
async function openProgramme(page: Page, code: string): Promise<ProgrammeAtWork> {
  await page.goto('/programmes/new')
  await enterAll(page.locator('main'), '', {
    code,
    title: 'Board for bad input',
    productClass: '2',
    alloyFamily: 'tin-lead',
    serviceYears: 10,
    environment: 'GB',
    annualVolume: 50,
  })
  await page.getByRole('radio', { name: 'Design engineering' }).check()
  await send(page, page.getByRole('button', { name: 'Open the programme' }))
  return new ProgrammeAtWork(code)
}

/** How many entries the programme's trail has, as the foot of its pages says. */
async function trailLength(page: Page, programme: ProgrammeAtWork): Promise<number> {
  await programme.open(page)
  const foot = await page.getByText(/^Trail entry \d+/).innerText()
  return Number(/\d+/.exec(foot)?.[0])
}

test('a form sent twice by a double click does its work once', async ({ page }) => {
  await signIn(page, 'ines')
  const programme = await openProgramme(page, `DC-${RUN}`)
  const before = await trailLength(page, programme)
  await programme.open(page, '/items/laminate')
  const ask = formOf(page, 'Ask another department')
  await unfold(ask)
  await ask.locator('summary').click()
  await enterAll(ask, '', {
    from: 'design',
    to: 'production',
    kind: 'information',
    question: 'Which laminate is in store?',
    dueOn: '2099-01-31',
  })
  await ask.getByRole('button', { name: 'Ask' }).dblclick()
  await page.waitForURL(/\/actions\/1$/)
  expect(await trailLength(page, programme)).toBe(before + 1)
  await programme.open(page, '/actions')
  await expect(page.getByRole('link', { name: 'Which laminate is in store?' })).toHaveCount(1)
})

test('of two editors of one parameter the second keeps their text and sees what changed', async ({
  browser,
}) => {
  const first = await atWork(browser, 'ines')
  const programme = await openProgramme(first, `ED-${RUN}`)
  const second = await first.context().newPage()
  const open = async (page: Page) => {
    await programme.open(page, '/items/laminate')
    const form = formOf(page, 'Revise Board thickness')
    await form.locator('summary').first().click()
    return form
  }
  const slow = await open(second)
  await slow.locator('[name="value"]').fill('2.4')
  await slow.locator('[name="reason"]').fill('Stiffer against vibration.')

  const quick = await open(first)
  await quick.locator('[name="value"]').fill('1.6')
  await quick.locator('[name="reason"]').fill('As stocked.')
  await send(first, quick.getByRole('button', { name: /^Save as revision/ }))
  const after = await trailLength(first, programme)

  await slow.getByRole('button', { name: /^Save as revision/ }).click()
  const refusal = slow.getByRole('alert').first()
  await expect(refusal).toContainText('was revised meanwhile: it now reads 1.6 (revision 1, “As stocked.”)')
  await expect(slow.locator('[name="value"]')).toHaveValue('2.4')
  await expect(slow.locator('[name="reason"]')).toHaveValue('Stiffer against vibration.')
  expect(await trailLength(first, programme)).toBe(after)
})

test('a table with a wrong line names it, and nothing of it is stored', async ({ page }) => {
  await signIn(page, 'petra')
  await page.goto('/works')
  const address = await page
    .getByRole('main')
    .getByRole('link', { name: /^FLUX/ })
    .first()
    .getAttribute('href')
  await page.goto(address ?? '')
  const title = page.locator('.title-block')
  const before = await title.innerText()
  const start = Date.parse('2026-11-02T06:00:00Z')
  const lines = Array.from({ length: 800 }, (_, index) => {
    const at = new Date(start + index * 60_000).toISOString()
    return `${at},${index + 2 === 731 ? 'O.812' : '0.812'},24`
  })
  const form = formOf(page, 'Import a CSV file')
  await unfold(form)
  const text = ['at,densityGPerMl,temperatureC', ...lines].join('\n')
  await form.locator('[name="file"]').setInputFiles(csvFile('flux-of-november.csv', text))
  await form.getByRole('button', { name: 'Preview the file' }).click()
  await page.waitForURL(/\/import\?/)
  const refusal = page.getByRole('alert').filter({ hasText: 'Nothing is imported: 1 thing is wrong' })
  await expect(refusal).toContainText('Line 731, column 2 (densityGPerMl): found "O.812"')
  await expect(page.getByRole('button', { name: /^Import \d+ readings$/ })).toHaveCount(0)
  await page.goto(address ?? '')
  expect(await title.innerText()).toBe(before)
})

test('a file whose name lies about its content, or that is too large, is not attached', async ({ page }) => {
  await signIn(page, 'ines')
  const programme = await openProgramme(page, `FI-${RUN}`)
  const before = await trailLength(page, programme)
  await programme.open(page, '/items/laminate#evidence')
  const form = formOf(page, 'Attach a file')
  await form.locator('[name="note"]').fill('From the supplier.')
  const attach = async (name: string, buffer: Buffer, message: string) => {
    await form.locator('[name="file"]').setInputFiles({ name, mimeType: 'application/octet-stream', buffer })
    await form.getByRole('button', { name: 'Attach the file' }).click()
    await expect(form.getByRole('alert')).toContainText('The file was not attached')
    await expect(form.getByRole('alert')).toContainText(message)
    await expect(form.locator('[name="note"]')).toHaveValue('From the supplier.')
  }
  await attach(
    'readings.csv',
    PNG,
    '"readings.csv" is named as a table as text (CSV), but its content is a PNG picture.',
  )
  await attach(
    'certificate.pdf',
    Buffer.from('This is no PDF.'),
    '"certificate.pdf" is named as a PDF document, but its content is plain text.',
  )
  await attachTooLarge(page)
  await expect(form.getByRole('alert')).toContainText('a file may have 50 MB')
  expect(await trailLength(page, programme)).toBe(before)
  await programme.open(page, '/items/laminate#evidence')
  await expect(page.getByRole('link', { name: /readings\.csv|certificate\.pdf|film\.png/ })).toHaveCount(0)
})

/** A file of 51 MB, made in the browser: the driver carries no more than 50. */
async function attachTooLarge(page: Page): Promise<void> {
  const form = formOf(page, 'Attach a file')
  await form.locator('[name="file"]').evaluate((box: HTMLInputElement, bytes) => {
    const chosen = new DataTransfer()
    chosen.items.add(new File([new Uint8Array(bytes)], 'film.png'))
    box.files = chosen.files
  }, 51 * MEBIBYTE)
  await form.getByRole('button', { name: 'Attach the file' }).click()
}

test('the server itself refuses 51 MB, whatever the page let through', async ({ page }) => {
  await signIn(page, 'ines')
  await page.goto('/programmes/LX-41/items/laminate')
  const action = await formOf(page, 'Attach a file').getAttribute('action')
  const answer = await page.evaluate(
    async ({ to, bytes }) => {
      const form = new FormData()
      form.set('kind', 'certificate')
      form.set('file', new File([new Uint8Array(bytes).fill(65)], 'certificate.txt'))
      const response = await fetch(to, {
        method: 'POST',
        body: form,
        headers: { accept: 'application/json' },
      })
      return { status: response.status, text: await response.text() }
    },
    { to: action ?? '', bytes: 51 * MEBIBYTE },
  )
  expect(answer.status).toBe(400)
  expect(answer.text).toContain('50 MiB')
  await page.reload()
  await expect(page.getByRole('link', { name: 'certificate.txt' })).toHaveCount(0)
})

test('a programme code that exists is refused, with all that was typed kept', async ({ page }) => {
  await signIn(page, 'tomas')
  await page.goto('/programmes/new')
  await enterAll(page.locator('main'), '', {
    code: 'lx-41',
    title: 'Level transmitter again',
    productClass: '3',
    alloyFamily: 'lead-free',
    serviceYears: 12,
    environment: 'GF',
    annualVolume: 300,
  })
  await page.getByRole('radio', { name: 'Production' }).check()
  await page.getByRole('button', { name: 'Open the programme' }).click()
  await expect(page.getByRole('alert').filter({ hasText: 'LX-41 is taken' }).first()).toBeVisible()
  await expect(page.locator('[name="code"]')).toHaveAttribute('aria-invalid', 'true')
  for (const [name, value] of Object.entries({
    code: 'lx-41',
    title: 'Level transmitter again',
    productClass: '3',
    alloyFamily: 'lead-free',
    serviceYears: '12',
    environment: 'GF',
    annualVolume: '300',
  }))
    await expect(page.locator(`main [name="${name}"]`)).toHaveValue(value)
  await expect(page.getByRole('radio', { name: 'Production' })).toBeChecked()
  await page.goto('/programmes?text=level+transmitter')
  const named = page
    .getByRole('main')
    .getByRole('row')
    .filter({ hasText: /level transmitter/i })
  await expect(named).toHaveCount(1)
  await expect(named).toContainText('Level transmitter, main board')
})
