import { expect, test, type Page } from 'playwright/test'
import { DEMO_PASSWORD } from '@/seed/people'
import { atWork, enterAll, formOf, send } from '@/tests/browser/at-work'
import { expectNoFault } from '@/tests/browser/no-fault'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** A code of its own, so that the story can be told again on the same database. */
const CODE = `SG-${Date.now() % 1_000_000}`
const programme = new ProgrammeAtWork(CODE)
const EDGE = 'interconnection'

test('Quill signs a list once, is stopped by a change, confirms after a change notice that all adopted', async ({
  browser,
}) => {
  test.setTimeout(15 * 60_000)
  const ines = await atWork(browser, 'ines')
  const petra = await atWork(browser, 'petra')
  const quill = await atWork(browser, 'quill')

  await test.step('Ines opens a board with edge contacts and two items of its own', async () => {
    await programme.begin(ines, 'Pump interface')
    await programme.specify(ines, 'interconnection', 'edge', 'It slides into the rack.')
    await programme.specify(ines, 'contact-gold', 2, 'Mated fifty times a year.')
    await programme.specify(ines, 'contact-nickel', 6, 'As the gold asks.')
    await programme.specify(petra, 'contacts-covered', true, 'Taped before the wave.')
    for (const title of ['Rack guide', 'Marking of the board'])
      await programme.addItem(ines, title, ['design', 'quality'])
  })

  await test.step('the desk and the route card lead Quill to one list', async () => {
    await quill.goto('/')
    // What is most pressing stands open; the rest is folded below it.
    await expect(quill.getByText(/items of the specification stage/)).not.toHaveCount(0)
    await programme.open(quill)
    await quill
      .locator('#specification')
      .getByRole('link', { name: /^\d+ to sign$/ })
      .click()
    await expect(quill.getByRole('heading', { name: /^Not now: \d+$/ })).toBeVisible()
  })

  await test.step('while it is open a drawing comes: nothing is signed, and it is said what changed', async () => {
    await attachLink(ines, 'own-1')
    await signTicked(quill, [EDGE, 'own-1', 'own-2'])
    await expect(quill.getByText(/Nothing was signed, for 1 of the 3/).first()).toBeVisible()
    await expect(quill.getByText(/Changed since you opened the list\. Attached evidence/)).toBeVisible()
    await expect(quill.locator('[name="items.own-1"]')).not.toBeChecked()
    await expect(quill.locator('[name="items.own-2"]')).toBeChecked()
  })

  await test.step('she reads it again, ticks it and signs three items with one password', async () => {
    const form = formOf(quill, 'Approve for Quality')
    await form.locator('[name="items.own-1"]').check()
    await form.locator('[name="password"]').fill(DEMO_PASSWORD)
    await send(quill, form.getByRole('button', { name: /^Sign the ticked items/ }))
    await expect(quill.getByRole('heading', { name: 'Signed: 3' })).toBeVisible()
    await programme.open(quill, '/trail')
    await expect(quill.getByText(/with one signature over 3 items/).first()).toBeVisible()
  })

  await test.step('Ines collects thicker gold and nickel in a notice, which says what lapses', async () => {
    await programme.open(ines, '/changes')
    await enterAll(formOf(ines, 'Open a change notice'), '', {
      title: 'Thicker contacts',
      reason: 'Mated twice as often.',
      costPerBoard: 0.4,
    })
    await send(ines, ines.getByRole('button', { name: 'Open the notice' }))
    for (const [key, value] of [
      ['contact-gold', 2.5],
      ['contact-nickel', 7],
    ] as const)
      await putIn(ines, key, value)
    await expect(ines.getByText(/1 of 1 approvals could be confirmed/)).toBeVisible()
  })

  await test.step('each department agrees; Ines cannot adopt her own, Quill does', async () => {
    for (const [page, name] of [
      [ines, 'Design engineering'],
      [petra, 'Production'],
      [quill, 'Quality'],
    ] as const) {
      await programme.open(page, '/changes/1')
      const form = formOf(page, `Answer for ${name}`)
      await form.getByRole('radio', { name: 'Agrees', exact: true }).check()
      await send(page, form.getByRole('button', { name: `Answer for ${name}` }))
    }
    await programme.open(ines, '/changes/1')
    await expect(ines.getByText(/You proposed every change of it/)).toBeVisible()
    await programme.open(quill, '/changes/1')
    const form = formOf(quill, 'Adopt the notice')
    await form.locator('[name="reason"]').fill('Agreed by all.')
    await send(quill, form.getByRole('button', { name: 'Make all 2 changes' }))
    await expect(quill.getByText('adopted', { exact: true }).first()).toBeVisible()
  })

  await test.step('her approval lapsed, and she confirms it with the differences before her', async () => {
    await quill.getByRole('link', { name: 'Approvals to sign after the change' }).click()
    await expect(quill.getByRole('heading', { name: /^To be confirmed/ })).toBeVisible()
    await expect(quill.getByText('2 µm → 2.5 µm').first()).toBeVisible()
    await expectNoFault(quill)
    await signTicked(quill, [EDGE])
    await expect(quill.getByRole('heading', { name: 'Signed: 3' })).toBeVisible()
  })

  await test.step('a phone needs no scrolling sideways, and axe finds no fault', async () => {
    for (const path of ['/sign?stage=specification', '/changes', '/changes/1']) {
      await programme.open(quill, path)
      await expectNoFault(quill)
    }
  })
})

async function attachLink(page: Page, item: string): Promise<void> {
  await programme.open(page, `/items/${item}#evidence`)
  const form = formOf(page, 'Attach a link')
  await form.locator('summary').first().click()
  await enterAll(form, '', { kind: 'drawing', 'what.url': 'https://example.invalid/drawing' })
  await send(page, form.getByRole('button', { name: /^Attach/ }))
}

async function signTicked(page: Page, items: readonly string[]): Promise<void> {
  const form = formOf(page, 'Approve for Quality')
  for (const item of items) await form.locator(`[name="items.${item}"]`).check()
  await form.locator('[name="password"]').fill(DEMO_PASSWORD)
  await form.getByRole('button', { name: /^Sign the ticked items/ }).click()
}

/** Chooses a value on the page of the first notice and proposes another. */
async function putIn(page: Page, parameter: string, value: number): Promise<void> {
  await programme.open(page, `/changes/1?revise=${parameter}`)
  const form = page.locator('form[aria-label^="Revise "]')
  await form.locator('[name="value"]').fill(String(value))
  await form.locator('[name="reason"]').fill('Mated twice as often.')
  await send(page, form.getByRole('button', { name: 'Put it in notice 1' }))
}
