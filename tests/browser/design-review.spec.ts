import { expect, test, type Page } from 'playwright/test'
import { DEMO_PASSWORD } from '@/seed/people'
import { atWork, enterAll, formOf, send } from '@/tests/browser/at-work'
import { expectNoFault } from '@/tests/browser/no-fault'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'
import { addSupplier, allocateLot, receiveLot } from '@/tests/browser/store-at-work'

/** A programme of its own for each telling, so that a second telling finds nothing of the first. */
const CODE = `DR-${Date.now().toString(36).slice(-6).toUpperCase()}`
const programme = new ProgrammeAtWork(CODE)

/** Types one line and sends it by Enter; the next form stands ready afterwards. */
async function minute(page: Page, text: string): Promise<void> {
  const box = page.locator('.minute-form [name="text"]')
  const shown = text.replace(/^[pnda]: /, '')
  await box.pressSequentially(text)
  await page.keyboard.press('Enter')
  await expect(page.getByRole('table', { name: 'Minutes' }).getByText(shown)).toBeVisible()
  await expect(page.locator('.minute-form [name="text"]')).toHaveValue('')
}

const today = (): string => new Date().toISOString().slice(0, 10)

test('a review whose line becomes an action, an answer and a value; comments; a defect mended; a nonconforming lot seen to', async ({
  browser,
}) => {
  test.setTimeout(15 * 60_000)
  const ines = await atWork(browser, 'ines')
  const petra = await atWork(browser, 'petra')
  const quill = await atWork(browser, 'quill')

  await test.step('Ines opens a programme, and remarks on the service life for Quill', async () => {
    await programme.begin(ines, 'Door controller')
    await programme.open(ines, '/specification/service-years')
    const form = formOf(ines, 'Comment')
    await form.locator('summary').click()
    await form.locator('[name="text"]').fill('Do doors last twenty years?')
    await form.locator('[name="mentions"]').selectOption({ label: 'Quill Amaro' })
    await send(ines, form.getByRole('button', { name: 'Write the comment' }))
    await expect(ines.getByText('Do doors last twenty years?')).toBeVisible()
  })

  await test.step('Quill has it on his desk', async () => {
    await quill.goto('/')
    const ticket = quill.getByRole('listitem').filter({ hasText: CODE })
    await ticket.getByRole('link', { name: /Do doors last twenty years\?/ }).click()
    await expect(quill.getByText('Do doors last twenty years?')).toBeVisible()
  })

  await test.step('Quill opens a review with a guest; the agenda is made from what is open', async () => {
    await programme.open(quill, '/reviews')
    const form = formOf(quill, 'Open a design review')
    await form.locator('[name="title"]').fill('Review of the specification')
    await form.getByLabel('Petra Vance, production').check()
    await form.locator('[name="guests"]').fill('Gesine Aure, supplier of boards')
    await send(quill, form.getByRole('button', { name: 'Open the review' }))
    await expect(quill.getByRole('heading', { name: 'Agenda' })).toBeVisible()
    await expect(quill.getByText(', guest: supplier of boards')).toBeVisible()
    await expect(quill.getByRole('link', { name: /^Comment 1 on/ })).toBeVisible()
    await expect(quill.getByRole('table', { name: 'What is open' })).toContainText('undetermined')
    await expectNoFault(quill)
  })

  await test.step('he takes the minutes by keyboard: a point, a note, a decision', async () => {
    await minute(quill, 'p: Spares for ten years')
    await expect(quill.locator('.own-points')).toContainText('Spares for ten years')
    await quill.locator('.minute-form [name="about"]').selectOption('item:programme-frame@programme-frame')
    await minute(quill, 'n: The volume was estimated last year')
    await minute(quill, 'd: The board is made in lots of 50')
  })

  await test.step('a line is put right while the minutes are open; both stay to be read', async () => {
    await quill.getByRole('link', { name: 'Strike line 3' }).click()
    const form = formOf(quill, 'Strike line 3')
    await enterAll(form, '', { instead: 'The board is made in lots of 100', reason: 'Misheard.' })
    await send(quill, form.getByRole('button', { name: 'Strike the line' }))
    const minutes = quill.getByRole('table', { name: 'Minutes' })
    await expect(minutes.locator('del')).toHaveText('The board is made in lots of 50')
    await expect(minutes).toContainText('instead of line 3')
  })

  await test.step('a line becomes an action with an owner and a date', async () => {
    await quill.locator('.minute-form [name="about"]').selectOption('item:programme-frame@programme-frame')
    await quill.locator('.minute-form [name="text"]').pressSequentially('a: How many boards per year now?')
    const form = formOf(quill, 'Write a line of minutes')
    await form.getByLabel('Owed by').selectOption({ label: 'Petra Vance, production' })
    await form.getByLabel('By', { exact: true }).fill('2099-12-31')
    await send(quill, form.getByRole('button', { name: 'Record the line' }))
    await expect(quill.getByRole('link', { name: 'Action 1' }).last()).toBeVisible()
  })

  await test.step('the chair signs the minutes; nothing can be written any more', async () => {
    await programme.open(ines, '/reviews/1')
    await expect(ines.getByText('Quill Amaro chairs review 1 and closes it.')).toBeVisible()
    const form = formOf(quill, 'Close the review')
    await form.locator('[name="password"]').fill(DEMO_PASSWORD)
    await send(quill, form.getByRole('button', { name: 'Sign the minutes' }))
    await expect(quill.getByText('signs the minutes as they stand', { exact: false })).toBeVisible()
    await expect(formOf(quill, 'Write a line of minutes')).toHaveCount(0)
    const naming = formOf(quill, 'Name the minutes as evidence')
    await naming.locator('summary').click()
    await naming.locator('[name="item"]').selectOption('programme-frame')
    await send(quill, naming.getByRole('button', { name: 'Name them as evidence' }))
    await expect(quill.getByRole('link', { name: 'minutes-of-review-1.json' })).toBeVisible()
  })

  await test.step('Petra answers the action, Quill accepts, Petra revises the value', async () => {
    await programme.open(petra, '/actions/1')
    await expect(petra.getByRole('link', { name: 'line 5 of review 1' })).toBeVisible()
    const answer = formOf(petra, 'Your answer')
    await enterAll(answer, '', { feasible: 'not asked', comment: '600, since the order of spring.' })
    await send(petra, answer.getByRole('button', { name: 'Send the answer' }))
    await programme.open(quill, '/actions/1')
    await send(quill, formOf(quill, 'Accept the answer').getByRole('button', { name: 'Accept the answer' }))
    await programme.specify(petra, 'annual-volume', 600, 'As answered in action 1.')
    await programme.open(quill, '/reviews/1')
    const line = quill.getByRole('row', { name: /How many boards per year now/ })
    await expect(line).toContainText('accepted')
    await expect(line).toContainText('revision 2')
    await expectNoFault(quill)
  })

  await test.step('Quill turns the comment into an action, which resolves it', async () => {
    await programme.open(quill, '/specification/service-years')
    await quill.getByRole('link', { name: 'Ask it as an action' }).click()
    const form = formOf(quill, 'Ask another department')
    await enterAll(form, '', { to: 'design', question: 'Do doors last twenty years?', dueOn: '2099-12-31' })
    await send(quill, form.getByRole('button', { name: 'Ask', exact: true }))
    await programme.open(quill, '/specification/service-years')
    await quill.getByText('One resolved').click()
    await expect(quill.getByRole('link', { name: 'Action 2' })).toBeVisible()
  })

  await test.step('a defect found at the bench waits at the rework desk with joint, kind and picture', async () => {
    await programme.open(quill, '/inspections/bench')
    const form = formOf(quill, 'Record an inspection')
    await expect(form.getByRole('button', { name: 'No defect: record it' }).first()).toBeVisible()
    await enterAll(form, 'inspections.0.', { assembly: 'DC-0001', jointsSeen: 120, magnification: 4 })
    await enterAll(form, 'inspections.0.defects.0.', { joint: 'J1-9', kind: 'bridge' })
    await form.getByRole('button', { name: 'Record with 1 defect' }).first().click()
    await expect(quill.getByRole('status')).toContainText('DC-0001 is recorded')
    await programme.open(petra, '/inspections/rework')
    const row = petra.getByRole('row', { name: /J1-9.*DC-0001.*bridge/ })
    await expect(row).toBeVisible()
    await row.getByText('Add one').click()
    const picture = formOf(petra, 'Attach a picture of J1-9 on DC-0001')
    await picture
      .locator('[name="file"]')
      .setInputFiles({ name: 'bridge.png', mimeType: 'image/png', buffer: PNG })
    await picture.locator('[name="note"]').fill('seen from the solder side')
    await picture.getByRole('button', { name: 'Attach the picture' }).click()
    await expect(petra.getByRole('img', { name: 'seen from the solder side' })).toBeVisible()
  })

  await test.step('Petra records the rework, its form filled in; Quill looks again', async () => {
    await petra.getByRole('link', { name: 'Record the rework of J1-9 on DC-0001' }).click()
    const rework = formOf(petra, 'Rework of J1-9 on DC-0001')
    await expect(rework.locator('[name="rows.0.defect"]')).toHaveValue('bridge')
    await expect(rework.locator('[name="rows.0.joint"]')).toHaveValue('J1-9')
    await rework.locator('[name="rows.0.minutes"]').fill('4')
    await send(petra, rework.getByRole('button', { name: 'Record it' }))
    await expect(petra.getByText('No joint waits for rework')).toBeVisible()
    await programme.open(quill, '/inspections/rework')
    await quill.getByRole('link', { name: 'Record the re-inspection of J1-9 on DC-0001' }).click()
    const again = formOf(quill, 'Re-inspection of J1-9 on DC-0001')
    await again.locator('[name="rows.0.outcome"]').selectOption('sound')
    await expectNoFault(quill)
    await send(quill, again.getByRole('button', { name: 'Record it' }))
    await expect(quill.getByText('No joint waits for rework')).toBeVisible()
    await expect(quill.getByRole('heading', { name: 'Waiting for re-inspection' })).toHaveCount(0)
  })

  await test.step('a nonconformity is opened from a lot, its subject filled in', async () => {
    const lot = {
      code: 'BB-7',
      kind: 'bare board',
      part: 'Door controller board',
      supplier: `Fjordprint of ${CODE}`,
      quantity: 200,
      supplierResult: '',
      tests: [],
    } as const
    await addSupplier(quill, lot.supplier)
    await receiveLot(quill, lot, today())
    await allocateLot(quill, lot, CODE)
    await programme.open(quill, '/lots/BB-7')
    await quill.getByRole('link', { name: 'Open a nonconformity' }).click()
    const form = formOf(quill, 'Open a nonconformity')
    await expect(form.locator('[name="place.lot"]')).toHaveValue('BB-7')
    await expect(form.locator('[name="place.part"]')).toHaveValue('Door controller board')
    await enterAll(form, '', {
      title: 'Lands do not wet',
      found: 'Three of eight boards show bare copper at the lands.',
      owner: 'production',
    })
    await send(quill, form.getByRole('button', { name: 'Open it' }))
    await expect(quill.getByText('Contain it:', { exact: false })).toBeVisible()
    await expectNoFault(quill)
  })

  await test.step('Petra contains and corrects it; somebody else finds that it helped, which closes it', async () => {
    await programme.open(petra, '/nonconformities/1')
    for (const [kind, text] of [
      ['containment', 'The lot is locked in the cage.'],
      ['cause', 'The coat was stored open over the summer.'],
      ['correction', 'The boards went back and were coated again.'],
    ] as const) {
      const form = formOf(petra, 'Record what was done')
      await enterAll(form, '', { kind, text })
      await send(petra, form.getByRole('button', { name: 'Record it' }))
      await expect(petra.getByRole('table', { name: 'What was done' })).toContainText(text)
    }
    await expect(petra.getByText('You recorded the correction yourself', { exact: false })).toBeVisible()
    await programme.open(quill, '/nonconformities/1')
    const check = formOf(quill, 'Record what was done')
    await enterAll(check, '', { kind: 'check', helped: 'yes', text: 'Eight of eight boards wet.' })
    await send(quill, check.getByRole('button', { name: 'Record it' }))
    await expect(quill.getByText('Corrected, and found to have helped.')).toBeVisible()
    await programme.open(quill, '/lots/BB-7')
    await expect(quill.getByRole('link', { name: 'Nonconformity 1: Lands do not wet' })).toBeVisible()
  })

  await test.step('the trail tells all of it in words', async () => {
    await programme.open(quill, '/trail')
    await expect(quill.getByText('Recorded what was done about a nonconformity').last()).toBeVisible()
    await expect(quill.getByText('Opened a nonconformity').last()).toBeVisible()
  })
})

/** One transparent point. */
const PNG = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==',
  'base64',
)
