import { expect, test } from 'playwright/test'
import { DEMO_PASSWORD } from '@/seed/people'
import { atWork, enter, enterAll, formOf, send } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** A code and a title of its own; declined, so that no programme of another story starts with it. */
const MARK = Date.now().toString(36).toUpperCase()
const TITLE = `Hold the transformer while its pins are bent ${MARK}`

test('Petra proposes a lesson, Quill in quality declines it with a reason, and the next programme is as before', async ({
  browser,
}) => {
  const petra = await atWork(browser, 'petra')
  const quill = await atWork(browser, 'quill')
  const ines = await atWork(browser, 'ines')
  const taught = new ProgrammeAtWork('LX-41')
  const later = new ProgrammeAtWork(`LS-${MARK}`)

  await test.step('Petra says what was learnt and which item later plans should have', async () => {
    await taught.open(petra, '/findings/lead-forming')
    await petra.getByRole('link', { name: 'Propose a lesson from this finding' }).click()
    const form = formOf(petra, 'Propose a lesson')
    await expect(form.locator('[name="source"]')).toHaveValue('finding:lead-forming')
    await enterAll(form, '', {
      title: TITLE,
      learnt: 'Pins bent without a holder cracked the seal of two transformers.',
      'change.item.title': TITLE,
      'change.item.asks': 'Which holder is used for each part whose leads are bent here?',
    })
    await enter(form.locator('[name="change.item.stage"]'), 'control')
    await enter(form.locator('[name="change.item.owner"]'), 'production')
    await form.getByRole('checkbox', { name: 'Quality' }).check()
    await send(petra, form.getByRole('button', { name: /^Propose/ }))
  })

  await test.step('she cannot decide on it; Quill declines it with a reason and a password', async () => {
    await taught.open(petra, '/lessons')
    await expect(petra.locator('form[aria-label^="Decide on lesson"]')).toHaveCount(0)
    await taught.open(quill, '/lessons')
    const form = quill.locator('form[aria-label^="Decide on lesson"]').first()
    await form.getByRole('radio', { name: /decline/i }).check()
    await form.locator('[name="reason"]').fill('The supplier bends them from the next delivery on.')
    await form.locator('[name="password"]').fill(DEMO_PASSWORD)
    await send(quill, form.getByRole('button').last())
    await quill.goto('/lessons')
    await expect(quill.getByRole('main').getByText(TITLE).first()).toBeVisible()
    await taught.open(quill, '/trail')
    await expect(quill.getByText(/The supplier bends them from the next delivery on/).first()).toBeVisible()
  })

  await test.step('the next programme that Ines opens does not have the item', async () => {
    await later.begin(ines, 'Level gauge')
    await later.open(ines)
    await expect(ines.getByRole('link', { name: 'Soldering irons' })).toBeVisible()
    await expect(ines.getByRole('link', { name: TITLE })).toHaveCount(0)
  })
})
