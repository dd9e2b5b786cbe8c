import { expect, test } from 'playwright/test'
import { DEMO_PASSWORD, DEMO_PEOPLE } from '@/seed/people'
import { atWork, formOf, listensForNews } from '@/tests/browser/at-work'
import { expectNoFault } from '@/tests/browser/no-fault'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** A code of its own, so that the story can be told again on the same database. */
const CODE = `KB-${Date.now() % 1_000_000}`
const programme = new ProgrammeAtWork(CODE)
const OWN = ['Rack guide', 'Marking of the board'] as const

test('Quill goes through items by keys alone, signs one and is led to the next', async ({ browser }) => {
  test.setTimeout(5 * 60_000)
  const ines = await atWork(browser, 'ines')
  const quill = await atWork(browser, 'quill')

  await test.step('Ines opens a board with two items of its own', async () => {
    await programme.begin(ines, 'Lift door sensor')
    for (const title of OWN) await programme.addItem(ines, title, ['quality'])
  })

  await test.step('S goes to the signing box, which Enter sends', async () => {
    const listens = listensForNews(quill)
    await programme.open(quill, '/items/own-1')
    await expect(quill.getByRole('heading', { level: 1, name: OWN[0] })).toBeVisible()
    await listens
    await quill.keyboard.press('s')
    const comment = formOf(quill, 'Approve for Quality').locator('[name="comment"]')
    await expect(comment).toBeFocused()
    await quill.keyboard.type('Seen on the drawing.')
    await expect(comment).toHaveValue('Seen on the drawing.')
    await quill.keyboard.press('Tab')
    await quill.keyboard.type(DEMO_PASSWORD)
    await quill.keyboard.press('Tab')
    await quill.keyboard.press('Tab')
    await expect(quill.getByRole('button', { name: `Approve, then ${OWN[1]}` })).toBeFocused()
    await quill.keyboard.press('Enter')
  })

  await test.step('the next item says what was done, and its signing box has the focus', async () => {
    await expect(quill.getByRole('heading', { level: 1, name: OWN[1] })).toBeVisible()
    await expect(quill.getByRole('status').getByText(/^Approved an item\. It is entry \d+/)).toBeVisible()
    await expect(quill.locator('#approvals')).toBeFocused()
    const listens = listensForNews(quill)
    await quill.reload()
    await expect(quill.getByText(/^Approved an item\./)).toHaveCount(0)
    await listens
  })

  await test.step('K goes back and J on, and the card marks where one is and what is signed', async () => {
    const card = quill.getByRole('navigation', { name: 'Items' })
    const listens = listensForNews(quill)
    await quill.keyboard.press('k')
    await expect(quill.getByRole('heading', { level: 1, name: OWN[0] })).toBeVisible()
    await expect(card.getByRole('link', { name: new RegExp(OWN[0]) })).toHaveAttribute('aria-current', 'page')
    await listens
    await quill.keyboard.press('j')
    await expect(quill.getByRole('heading', { level: 1, name: OWN[1] })).toBeVisible()
    await expectNoFault(quill)
  })

  await test.step('a letter typed into a box is a letter', async () => {
    const comment = formOf(quill, 'Approve for Quality').locator('[name="comment"]')
    await comment.fill('')
    await comment.press('k')
    await expect(comment).toHaveValue('k')
    await expect(quill.getByRole('heading', { level: 1, name: OWN[1] })).toBeVisible()
  })

  await test.step('on a phone the card is a drawer', async () => {
    await quill.setViewportSize({ width: 390, height: 844 })
    const card = quill.getByRole('navigation', { name: 'Items' })
    await expect(card).toBeHidden()
    await quill.getByRole('button', { name: 'Items' }).click()
    await expect(card).toBeVisible()
    await card.getByRole('link', { name: new RegExp(OWN[0]) }).click()
    await expect(quill.getByRole('heading', { level: 1, name: OWN[0] })).toBeVisible()
    await expect(card).toBeHidden()
  })
})

test('what is typed and not sent is asked about before the page is left', async ({ browser }) => {
  const tomas = await atWork(browser, 'tomas')
  await tomas.goto('/programmes/LX-41/items/laminate')
  const asked: string[] = []
  tomas.on('dialog', (dialog) => {
    asked.push(dialog.type())
    void dialog.accept()
  })
  await tomas.getByRole('link', { name: 'Route card' }).click()
  await expect(tomas.getByRole('heading', { level: 2, name: 'Specification' })).toBeVisible()
  expect(asked).toEqual([])

  await tomas.goto('/programmes/LX-41/items/laminate')
  const ask = formOf(tomas, 'Ask another department')
  await ask.locator('summary').click()
  await ask.locator('[name="question"]').pressSequentially('Is FR-4 in store?')
  await tomas.getByRole('link', { name: 'Route card' }).click()
  await expect(tomas.getByRole('heading', { level: 2, name: 'Specification' })).toBeVisible()
  expect(asked).toEqual(['beforeunload'])
})

test('who is at work before the scripts are there is not called back to what was done', async ({
  browser,
}) => {
  const code = `${CODE}L`
  const ines = await atWork(browser, 'ines')
  await new ProgrammeAtWork(code).begin(ines, 'Lift door sensor, late')
  await ines.setViewportSize({ width: 390, height: 500 })
  let letThrough = (): void => undefined
  const late = new Promise<void>((resolve) => (letThrough = resolve))
  await ines.route('**/*.js', async (route) => {
    await late
    await route.continue()
  })
  const invite = formOf(ines, 'Invite a person')
  await ines.goto(`/programmes/${code}/people`, { waitUntil: 'commit' })
  await invite.locator('[name="email"]').fill(DEMO_PEOPLE.tomas.email)
  await invite.getByRole('radio', { name: 'Design engineering' }).check()
  await invite.getByRole('button', { name: 'Invite' }).click()
  await expect(ines.getByText(/It is entry \d+ of the trail/)).toBeVisible()

  const listens = listensForNews(ines)
  const quality = invite.getByRole('radio', { name: 'Quality' })
  await quality.check()
  const scrolled = await ines.evaluate(() => scrollY)
  expect(scrolled).toBeGreaterThan(0)
  letThrough()
  await listens
  await expect(quality).toBeFocused()
  await expect(quality).toBeChecked()
  expect(await ines.evaluate(() => scrollY)).toBe(scrolled)
})
