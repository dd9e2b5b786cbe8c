import { expect, test, type Browser, type Page } from 'playwright/test'
import { LEVEL_TRANSMITTER } from '@/seed/boards/level-transmitter'
import { atWork, enterAll, formOf, send, unfold } from '@/tests/browser/at-work'
import { expectNoFault } from '@/tests/browser/no-fault'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** A programme of its own for each telling, so that a second telling finds nothing of the first. */
const CODE = `IB-${Date.now().toString(36).slice(-6).toUpperCase()}`
const programme = new ProgrammeAtWork(CODE)

/** The form at the bench, once scripts have taken it over. */
async function bench(page: Page) {
  const form = formOf(page, 'Record an inspection')
  await expect(
    form.getByRole('button', { name: /^(No defect: record it|Record with)/ }).first(),
  ).toBeVisible()
  return form
}

async function openProgramme(ines: Page): Promise<void> {
  await programme.begin(ines, 'Level switch')
  for (const [key, value] of Object.entries({
    'lead-holes': LEVEL_TRANSMITTER['lead-holes'],
    'surface-mount-joints': 0,
    'board-length': 160,
    'board-width': 100,
    'component-places': [
      { component: 'U1–U9', row: 'along', xMm: 90, yMm: 60 },
      { component: 'J1', row: 'across', xMm: 14, yMm: 50 },
    ],
  }))
    await programme.specify(ines, key, value, 'From the layout.')
}

async function withoutScripts(browser: Browser, signedIn: Page, width: number): Promise<Page> {
  const context = await browser.newContext({
    javaScriptEnabled: false,
    storageState: await signedIn.context().storageState(),
    viewport: { width, height: 800 },
  })
  return context.newPage()
}

test('Quill inspects at the bench: one assembly after another, by keyboard, by tapping and by hand', async ({
  browser,
}) => {
  test.setTimeout(10 * 60_000)
  const quill = await atWork(browser, 'quill')

  await test.step('Ines opens a programme and says where components stand', async () => {
    await openProgramme(await atWork(browser, 'ines'))
  })

  await test.step('the first assembly: joints come from the hole table, magnification from the lands', async () => {
    await programme.open(quill, '/inspections')
    await quill.getByRole('link', { name: 'Inspect at the bench' }).click()
    const form = await bench(quill)
    await expect(form.getByText('306 joints inspected at 3 ×, by Quill Amaro')).toBeVisible()
    await form.locator('[name="inspections.0.assembly"]').fill('LS-0099')
    await quill.keyboard.press('Enter')
    await expect(quill.getByRole('status')).toContainText('LS-0099 is recorded: no defect.')
  })

  await test.step('the next serial stands ready, selected; one Enter records it', async () => {
    const form = await bench(quill)
    const assembly = form.locator('[name="inspections.0.assembly"]')
    await expect(assembly).toHaveValue('LS-0100')
    await expect(assembly).toBeFocused()
    await quill.keyboard.press('Enter')
    await expect(quill.getByRole('status')).toContainText('LS-0100 is recorded: no defect.')
  })

  await test.step('defects by keyboard alone: Enter goes on to the next box, Ctrl+Enter records', async () => {
    const form = await bench(quill)
    await form.getByLabel('Joint', { exact: true }).first().focus()
    for (const text of ['J1-9', 'br', '14', '48.5', '']) {
      await quill.keyboard.type(text)
      await quill.keyboard.press('Enter')
    }
    for (const text of ['U3-4', 'hnf']) {
      await quill.keyboard.type(text)
      await quill.keyboard.press('Enter')
    }
    await expect(form.getByText('hole not filled', { exact: true }).first()).toBeVisible()
    await quill.keyboard.press('Control+Enter')
    await expect(quill.getByRole('status')).toContainText(
      'LS-0101 is recorded: bridge at J1-9; hole not filled at U3-4.',
    )
  })

  await test.step('tapped and clicked: a kind from the row of kinds, a place on the plan', async () => {
    const form = await bench(quill)
    await form.getByRole('button', { name: 'icicle', exact: true }).click()
    await form.getByLabel('Joint', { exact: true }).first().fill('J1-3')
    await form.locator('.bench-plan svg').click({ position: { x: 60, y: 120 } })
    const across = Number(await form.getByLabel('Across, mm').first().inputValue())
    expect(across).toBeGreaterThan(10)
    expect(across).toBeLessThan(80)
    await form.getByRole('button', { name: 'Record with 1 defect' }).first().click()
    await expect(quill.getByRole('status')).toContainText('LS-0102 is recorded: icicle at J1-3.')
  })

  await test.step('a defect without its joint is refused, and what was typed stays', async () => {
    const form = await bench(quill)
    await form.getByRole('button', { name: 'void', exact: true }).click()
    await form.getByRole('button', { name: 'Record with 1 defect' }).first().click()
    await expect(form.getByText('Say which joint, such as T1-3.').first()).toBeVisible()
    await expect(form.getByLabel('Kind', { exact: true }).first()).toHaveValue('void')
    await expectNoFault(quill)
  })

  await test.step('on a phone, before scripts load, it works the same', async () => {
    const phone = await withoutScripts(browser, quill, 390)
    await programme.open(phone, '/inspections/bench')
    const form = formOf(phone, 'Record an inspection')
    await expect(form.locator('[name="inspections.0.assembly"]')).toHaveValue('LS-0103')
    await enterAll(form, 'inspections.0.defects.0.', { joint: 'J1-12', kind: 'bridge', xMm: 14, yMm: 53 })
    await form.getByRole('button', { name: 'Record the inspection' }).first().click()
    await expect(phone.getByRole('status')).toContainText('LS-0103 is recorded: bridge at J1-12.')
    const button = await formOf(phone, 'Record an inspection').getByRole('button').first().boundingBox()
    expect(button?.height).toBeGreaterThanOrEqual(44)
  })

  await test.step('the page of inspections tells rates, places and what the electrical test added', async () => {
    const petra = await atWork(browser, 'petra')
    await programme.addRecord(petra, 'electrical-test', {
      testedOn: new Date().toISOString().slice(0, 10),
      assembly: 'LS-0099',
      tested: 1,
      passedFirst: 0,
      jointFailures: 1,
      defect: 'non-wetting',
      joint: 'U7-1',
    })
    const ines = await atWork(browser, 'ines')
    await programme.specify(ines, 'defect-free-boards', 98, 'As the sister board.')
    await programme.open(quill, '/inspections')
    await expect(
      quill.getByRole('row', { name: /U7-1.*LS-0099.*non-wetting.*electrical test/ }),
    ).toBeVisible()
    await expect(quill.getByText('The budget is exceeded.').first()).toBeVisible()
    await expect(quill.getByRole('img', { name: 'Defects on the board, soldered side' })).toBeVisible()
    await expect(quill.getByRole('row', { name: /^Visual inspection 5 2/ })).toBeVisible()
    await quill.getByLabel('Serial number, or part of it').fill('0101')
    await quill.getByRole('button', { name: 'Find', exact: true }).click()
    await expect(quill.getByRole('table', { name: 'Inspections' }).getByRole('row')).toHaveCount(2)
    await expectNoFault(quill)
  })

  await test.step('two call a set blind; the page for calling shows nobody’s calls', async () => {
    await programme.open(quill, '/inspections/agreement')
    const paste = formOf(quill, 'Record calls from a table')
    await unfold(paste)
    const calls = ['sound', 'sound', 'bridge', 'void', 'sound', 'bridge']
    await enterAll(paste, '', {
      study: 'Set A',
      lines: calls.map((call, at) => `Iris Holm; A-${at + 1}; ${call}; 1; ${call}`).join('\n'),
    })
    await send(quill, paste.getByRole('button', { name: 'Record all calls, or none' }))
    await quill.goto(`/programmes/${CODE}/inspections/agreement/call?study=Set+A`)
    const form = formOf(quill, 'Call the set')
    await expect(form.getByText('A-6')).toBeVisible()
    await expect(form.getByText('Iris Holm')).toHaveCount(0)
    const boxes = form.getByLabel('Call', { exact: true })
    await expect(boxes).toHaveCount(6)
    await boxes.first().focus()
    for (const typed of ['s', 's', 'br', 's', 's', 'br']) {
      await quill.keyboard.type(typed)
      await quill.keyboard.press('Enter')
    }
    await send(quill, form.getByRole('button', { name: 'Save results' }))
    // 6 joints, both 3 sound and 2 bridge alike, one void called sound: observed 5/6, by chance 1/2, kappa 2/3.
    await expect(
      quill.getByRole('row', { name: /^Iris Holm and Quill Amaro 6 83\.3 % 50 % 0\.667/ }),
    ).toBeVisible()
    await expect(quill.getByRole('row', { name: /^A-4 void sound void/ })).toBeVisible()
    await expect(quill.getByRole('row', { name: /^Quill Amaro 1 of 3 \(33\.3 %\)/ })).toBeVisible()
  })
})
