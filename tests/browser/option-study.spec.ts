import { expect, test } from 'playwright/test'
import { DEMO_PEOPLE } from '@/seed/people'
import { atWork, enterAll, formOf, send, signIn } from '@/tests/browser/at-work'
import { expectNoFault } from '@/tests/browser/no-fault'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** A code of its own, so that the story can be told again on the same database. */
const CODE = `OP-${Date.now() % 1_000_000}`
const programme = new ProgrammeAtWork(CODE)

test('Tomas lays three finishes side by side and adopts one; Petra is told that it is not hers', async ({
  browser,
}) => {
  test.setTimeout(8 * 60_000)
  const tomas = await atWork(browser, 'tomas')
  const ines = await atWork(browser, 'ines')
  const petra = await atWork(browser, 'petra')

  await test.step('Ines opens a programme and invites Tomas and Petra', async () => {
    await programme.begin(ines, 'Flow switch')
    await programme.invite(ines, DEMO_PEOPLE.tomas.email, 'design')
    await programme.specify(ines, 'board-finish', 'hot-air-tin-lead', 'As on the last board.')
    await programme.specify(ines, 'board-finish-least', 5, 'As on the last board.')
  })

  await test.step('Tomas goes from the item to a new study, which starts from today’s values', async () => {
    await programme.open(tomas, '/items/board-finish')
    await tomas.getByRole('link', { name: 'Compare options' }).click()
    const form = formOf(tomas, 'The alternatives')
    await expect(form.locator('[name="alternatives.1.values.board-finish"]')).toHaveValue('hot-air-tin-lead')
    await expect(form.locator('[name="alternatives.1.values.board-finish-least"]')).toHaveValue('5')
  })

  await test.step('one more alternative keeps what was typed; a value out of bounds is refused at its box', async () => {
    const form = formOf(tomas, 'The alternatives')
    await enterAll(form, '', {
      title: 'Which finish for the flow switch?',
      'alternatives.0.costs.0.kind': 'piece',
      'alternatives.0.costs.0.amount': '1.2',
      'alternatives.0.costs.1.kind': 'tooling',
      'alternatives.0.costs.1.amount': '0',
      'alternatives.1.name': 'Thin tin-lead',
      'alternatives.1.values.board-finish-least': 2,
      'alternatives.1.costs.0.kind': 'piece',
      'alternatives.1.costs.0.amount': '0.8',
      'alternatives.1.costs.1.kind': 'tooling',
      'alternatives.1.costs.1.amount': '0',
    })
    await form.getByRole('button', { name: 'One more alternative' }).click()
    const third = form.locator('[name="alternatives.2.name"]')
    await expect(third).toBeVisible()
    await expect(form.locator('[name="alternatives.1.name"]')).toHaveValue('Thin tin-lead')
    await enterAll(form, 'alternatives.', {
      '2.name': 'Thick tin-lead',
      '2.values.board-finish-least': 900,
      '2.costs.0.kind': 'piece',
      '2.costs.0.amount': '1.1',
      '2.costs.1.kind': 'tooling',
      '2.costs.1.amount': '300',
    })
    await form.getByRole('button', { name: 'Lay them side by side' }).click()
    const box = form.locator('[name="alternatives.2.values.board-finish-least"]')
    await expect(box).toHaveAttribute('aria-invalid', 'true')
    await expect(box).toHaveValue('900')
    await box.fill('8')
    await send(tomas, form.getByRole('button', { name: 'Lay them side by side' }))
  })

  await test.step('the study says what turns, and what each costs', async () => {
    await expect(
      tomas.getByRole('heading', { level: 1, name: 'Which finish for the flow switch?' }),
    ).toBeVisible()
    const thickness = tomas.getByRole('row', { name: /^Thickness of the board finish/ })
    await expect(thickness).toContainText('turned: meets today')
    await expect(thickness).toContainText('Order at least 2.5 µm of finish.')
    const over = tomas.getByRole('row', { name: /^Over 400 boards/ })
    await expect(over.getByRole('cell')).toHaveText([/^480/, /^320 \(least, rework left out\)/, /^740/])
    await tomas.getByLabel('Production years').fill('10')
    await tomas.getByRole('button', { name: 'Recalculate' }).click()
    await expect(
      tomas
        .getByRole('row', { name: /^Over 4.?000 boards/ })
        .getByRole('cell')
        .first(),
    ).toHaveText(/^4800/)
  })

  await test.step('Petra, in production, reads it and cannot adopt', async () => {
    await programme.open(petra, '/options')
    await petra.getByRole('link', { name: 'Which finish for the flow switch?' }).click()
    await expect(
      petra.getByText(/belongs to design engineering; they or the lead adopt/).first(),
    ).toBeVisible()
    await expect(petra.getByRole('button', { name: 'Adopt it' })).toHaveCount(0)
  })

  await test.step('Tomas has it open while Ines revises the thickness: he has to read it again', async () => {
    await programme.specify(ines, 'board-finish-least', 6, 'The supplier’s usual least.')
    const form = formOf(tomas, 'Adopt one')
    await form.getByRole('radio', { name: /Thick tin-lead/ }).check()
    await form.locator('[name="reason"]').fill('It keeps a year in store.')
    await form.getByRole('button', { name: 'Adopt it' }).click()
    await expect(tomas.getByText(/was revised since you read the study/).first()).toBeVisible()
  })

  await test.step('he adopts with a reason, and it stands until the value is revised', async () => {
    await tomas.reload()
    const form = formOf(tomas, 'Adopt one')
    await form.getByRole('radio', { name: /Thick tin-lead/ }).check()
    await form.locator('[name="reason"]').fill('It keeps a year in store.')
    await send(tomas, form.getByRole('button', { name: 'Adopt it' }))
    await expect(tomas.getByText('Still valid')).toBeVisible()
    await expect(tomas.getByText('It keeps a year in store.').first()).toBeVisible()
    await expect(formOf(tomas, 'Adopt one')).toHaveCount(0)
    await programme.open(tomas, '/specification/board-finish-least')
    await expect(
      tomas.getByText(/Option study 1, “Thick tin-lead”: It keeps a year in store\./).first(),
    ).toBeVisible()
    await programme.specify(ines, 'board-finish-least', 7, 'Seven will do.')
    await programme.open(tomas, '/options/1')
    await expect(tomas.getByText('The specification has moved on since')).toBeVisible()
  })

  await test.step('axe finds no fault, and a phone needs no scrolling sideways', async () => {
    for (const path of ['/options', '/options/1', '/options/new?item=lead-finish']) {
      await programme.open(tomas, path)
      await expectNoFault(tomas)
    }
  })
})

test('before scripts load the number of alternatives grows, and what was typed stays', async ({
  browser,
}) => {
  const page = await (await browser.newContext({ javaScriptEnabled: false })).newPage()
  await signIn(page, 'ines')
  await page.goto('/programmes/LX-41/options/new')
  await page.locator('[name="item.board-finish"]').check()
  await page.getByLabel('Alternatives').selectOption('3')
  await page.getByRole('button', { name: 'Continue' }).click()
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
