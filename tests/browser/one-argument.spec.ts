import { expect, test } from 'playwright/test'
import { DEMO_PEOPLE } from '@/seed/people'
import { atWork, enterAll, formOf, send } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** Codes of their own, so that the story can be told again on the same database. */
const CODE = `AR-${Date.now() % 1_000_000}`
const NEXT = `${CODE}-B`
const programme = new ProgrammeAtWork(CODE)
const next = new ProgrammeAtWork(NEXT)

test('Design and production have their argument over laminate, finish and process in one study', async ({
  browser,
}) => {
  test.setTimeout(10 * 60_000)
  const ines = await atWork(browser, 'ines')
  const petra = await atWork(browser, 'petra')

  await test.step('Ines opens a programme with production and quality, and says what it may cost', async () => {
    await programme.begin(ines, 'Relay driver for a lift')
    await programme.open(ines, '/cost')
    const form = formOf(ines, 'Set the ceiling')
    await form.locator('summary').first().click()
    await enterAll(form, '', { amount: 900, boards: 400, lots: 4, reason: 'As offered to the customer.' })
    await send(ines, form.getByRole('button', { name: 'Set the ceiling' }))
    await expect(ines.getByText('Within the ceiling')).toBeVisible()
  })

  await test.step('she lays two ways side by side that touch three items, with nothing known of their cost', async () => {
    await programme.open(ines, '/options/new')
    for (const item of ['laminate', 'board-finish', 'soldering-process'])
      await ines.locator(`[name="item.${item}"]`).check()
    await ines.getByRole('button', { name: 'Continue' }).click()
    const form = formOf(ines, 'The alternatives')
    await enterAll(form, '', {
      title: 'Thick board by wave, or thin board by hand?',
      'alternatives.0.name': 'Thick by wave',
      'alternatives.0.values.board-thickness': 2.4,
      'alternatives.0.values.board-finish': 'hot-air-tin-lead',
      'alternatives.0.values.soldering-process': 'wave',
      'alternatives.1.name': 'Thin by hand',
      'alternatives.1.values.board-thickness': 0.8,
      'alternatives.1.values.board-finish': 'hot-air-tin-lead',
      'alternatives.1.values.soldering-process': 'hand',
    })
    await send(ines, form.getByRole('button', { name: 'Lay them side by side' }))
    const total = ines.getByRole('row', { name: /^Over 400 boards/ })
    await expect(total.getByRole('cell').first()).toContainText('not known')
    await expect(ines.getByText('no cost is named').first()).toBeVisible()
  })

  await test.step('she asks Petra by name, within the study', async () => {
    const form = formOf(ines, 'Ask another department')
    await form.locator('summary').first().click()
    await form.locator('[name="to"]').selectOption('production')
    await form.locator('[name="person"]').selectOption({ label: `${DEMO_PEOPLE.petra.name}, production` })
    await form.locator('[name="kind"]').selectOption('cost')
    await form.locator('[name="question"]').fill('What does each way cost, and how long until it runs?')
    await form.locator('[name="dueOn"]').fill('2099-01-01')
    await send(ines, form.getByRole('button', { name: 'Ask' }))
  })

  await test.step('Petra answers several amounts: exact, a range, one not known; and lays her quotation with it', async () => {
    await programme.open(petra, '/actions/1')
    const form = formOf(petra, 'Your answer')
    await form.getByRole('radio', { name: 'With changes' }).check()
    await enterAll(form, 'amounts.', {
      '0.kind': 'piece',
      '0.per': 'board',
      '0.amount': '0.9',
      '0.alternative': 'Thick by wave',
      '1.kind': 'tooling',
      '1.amount': '120 to 150',
      '1.alternative': 'Thick by wave',
      '2.kind': 'piece',
      '2.per': 'board',
      '2.alternative': 'Thin by hand',
    })
    await form.locator('[name="comment"]').fill('The pallet is quoted; hand soldering we must time first.')
    await send(petra, form.getByRole('button', { name: 'Send the answer' }))
    await expect(petra.getByRole('row', { name: /^Tooling/ })).toContainText('120 to 150')
    const files = formOf(petra, 'Attach a file')
    await files.locator('[name="file"]').setInputFiles({
      name: 'quotation.txt',
      mimeType: 'text/plain',
      buffer: Buffer.from(`A pallet for ${CODE}`),
    })
    await files.getByRole('button', { name: 'Attach the file' }).click()
    await expect(petra.getByRole('link', { name: 'quotation.txt' })).toBeVisible()
  })

  await test.step('the study draws on the answer, and calls nothing least while a figure is missing', async () => {
    await send(
      ines,
      await (async () => {
        await programme.open(ines, '/actions/1')
        return formOf(ines, 'Accept the answer').getByRole('button', { name: 'Accept the answer' })
      })(),
    )
    await programme.open(ines, '/options/1')
    const total = ines.getByRole('row', { name: /^Over 400 boards/ }).getByRole('cell')
    // 400 · 0.9 and 120 to 150 once.
    await expect(total.nth(0)).toContainText('480 to 510')
    await expect(total.nth(1)).toContainText('not known')
    await expect(ines.getByText('(least')).toHaveCount(0)
  })

  await test.step('production takes the way without a figure out, and puts another in', async () => {
    await programme.open(petra, '/options/1')
    const withdraw = formOf(petra, 'Withdraw Thin by hand')
    await withdraw.locator('summary').first().click()
    await withdraw.locator('[name="reason"]').fill('Nobody has the hands for it.')
    await send(petra, withdraw.getByRole('button', { name: 'Withdraw' }))
    await petra.getByRole('link', { name: 'Add an alternative' }).click()
    const form = formOf(petra, 'Add an alternative')
    await enterAll(form, 'alternative.', {
      name: 'Usual by wave',
      'values.board-thickness': 1.6,
      'values.board-finish': 'hot-air-tin-lead',
      'values.soldering-process': 'wave',
      'costs.0.kind': 'piece',
      'costs.0.amount': '0.7',
      'costs.1.kind': 'tooling',
      'costs.1.amount': '0',
    })
    await form.locator('[name="reason"]').fill('We have pallets for this thickness.')
    await send(petra, form.getByRole('button', { name: 'Add it to the study' }))
    // 400 · 0.7, against 480 at the least.
    await expect(petra.getByRole('row', { name: /^Over 400 boards/ })).toContainText('280 (least')
    await expect(petra.getByText('Nobody has the hands for it.').first()).toBeVisible()
  })

  await test.step('Ines adopts it: the values of all three items in one act', async () => {
    await programme.open(ines, '/options/1')
    const form = formOf(ines, 'Adopt one')
    await form.getByRole('radio', { name: /Usual by wave/ }).check()
    await form.locator('[name="reason"]').fill('Cheapest for certain, and production can start at once.')
    await send(ines, form.getByRole('button', { name: 'Adopt it' }))
    for (const [parameter, shown] of [
      ['board-thickness', '1.6'],
      ['board-finish', /hot.air/i],
      ['soldering-process', /wave/i],
    ] as const) {
      await programme.open(ines, `/specification/${parameter}`)
      await expect(ines.getByText(/Option study 1, “Usual by wave”/).first()).toBeVisible()
      await expect(ines.locator('main')).toContainText(shown)
    }
  })

  await test.step('the money is committed within the ceiling, and the trail says every step in words', async () => {
    await programme.open(ines, '/cost')
    await expect(ines.getByRole('row', { name: /^Committed/ })).toContainText('280')
    await programme.open(ines, '/trail')
    for (const words of ['Withdrew an alternative of a study', 'Laid a file with an answer'])
      await expect(ines.getByText(words).last()).toBeVisible()
  })

  await test.step('the next programme starts from it, and the two stand side by side', async () => {
    await ines.goto('/programmes/new')
    await enterAll(ines.locator('main'), '', {
      code: NEXT,
      title: 'Relay driver for a crane',
      from: CODE,
      productClass: '3',
      alloyFamily: 'tin-lead',
      serviceYears: 10,
      environment: 'GF',
      annualVolume: 400,
    })
    await ines.getByRole('radio', { name: 'Design engineering' }).check()
    await send(ines, ines.getByRole('button', { name: 'Open the programme' }))
    await next.open(ines, '/specification/board-thickness')
    await expect(ines.getByText(`Taken over from ${CODE}, revision 1 there.`).first()).toBeVisible()
    await next.open(ines, `/compare?with=${CODE}`)
    const life = ines.getByRole('row', { name: /^Service life/ })
    await expect(life).toContainText('10')
    await expect(life).toContainText('20')
    await expect(ines.getByRole('row', { name: /^Board thickness/ })).toHaveCount(0)
  })
})
