import { expect, test, type Page } from 'playwright/test'
import { LEVEL_TRANSMITTER } from '@/seed/boards/level-transmitter'
import { DEMO_PASSWORD, DEMO_PEOPLE } from '@/seed/people'
import { atWork, enterAll, formOf, listensForNews, send, unfold } from '@/tests/browser/at-work'
import { BY_KEYBOARD, ON_A_PHONE } from '@/tests/browser/hands'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'
import { WorksAtWork } from '@/tests/browser/works-at-work'

/** One act of each role, told on a phone and by keyboard alone. */
for (const hand of [ON_A_PHONE, BY_KEYBOARD]) {
  test.describe(hand.how, () => {
    /** A code of its own for each telling. */
    const code = `NM-${hand === ON_A_PHONE ? 'P' : 'K'}${Date.now() % 1_000_000}`
    // Each stop of the Tab key is looked at.
    test.describe.configure({ timeout: 180_000 })
    const programme = new ProgrammeAtWork(code)
    const works = new WorksAtWork(code)

    /** Opens a page and waits until its scripts run, so that nothing typed is taken twice. */
    const open = async (page: Page, path: string) => {
      const listens = listensForNews(page)
      await programme.open(page, path)
      await listens
    }

    test.beforeAll(async ({ browser }) => {
      test.setTimeout(3 * 60_000)
      const ines = await atWork(browser, 'ines')
      await programme.begin(ines, 'Pump starter')
      await programme.invite(ines, DEMO_PEOPLE.tomas.email, 'design')
      await programme.addItem(ines, 'Rack guide', ['design'])
      for (const [key, value] of Object.entries({
        'lead-holes': LEVEL_TRANSMITTER['lead-holes'],
        'surface-mount-joints': 0,
      }))
        await programme.specify(ines, key, value, 'From the layout.')
      await programme.open(ines, '/items/laminate')
      const ask = formOf(ines, 'Ask another department')
      await unfold(ask.locator('[name="question"]'))
      await enterAll(ask, '', { to: 'production', question: 'Does it fit the rack?', dueOn: '2031-05-01' })
      await send(ines, ask.getByRole('button', { name: 'Ask', exact: true }))
      const petra = await atWork(browser, 'petra')
      await works.openLine(petra, `Line of ${code}`)
      await works.openMachine(petra, `${code} fluxer`, 'fluxer')
      await works.openLog(petra, `${code} fluxer`, {
        code: `${code} density`,
        characteristic: 'flux-density',
        instrument: null,
      })
      await Promise.all([ines.context().close(), petra.context().close()])
    })

    test('Tomas revises a value of an item and approves another', async ({ browser }) => {
      const tomas = await atWork(browser, 'tomas', hand.context)
      await open(tomas, '/items/laminate')
      const revise = formOf(tomas, 'Revise Board thickness')
      await hand.press(revise.locator('summary').first())
      await hand.write(revise.locator('[name="value"]'), '1.6')
      await hand.write(revise.locator('[name="reason"]'), 'As the rack takes it.')
      await hand.press(revise.getByRole('button', { name: /^Save as revision/ }))
      await expect(tomas.getByRole('status').getByText(/It is entry \d+ of the trail/)).toBeVisible()

      await open(tomas, '/items/own-1')
      const approve = formOf(tomas, 'Approve for Design engineering')
      await hand.write(approve.locator('[name="password"]'), DEMO_PASSWORD)
      await hand.press(approve.getByRole('button', { name: 'Approve for Design engineering' }))
      await expect(tomas.getByRole('status').getByText(/^Approved an item/)).toBeVisible()
    })

    test('Petra answers what she was asked, and enters the day’s readings', async ({ browser }) => {
      const petra = await atWork(browser, 'petra', hand.context)
      await open(petra, '/actions/1')
      const answer = formOf(petra, 'Your answer')
      await hand.pick(answer.getByRole('radio', { name: 'Yes', exact: true }))
      await hand.write(answer.locator('[name="comment"]'), 'It does, with a millimetre to spare.')
      await hand.press(answer.getByRole('button', { name: 'Send the answer' }))
      await expect(petra.getByText('It does, with a millimetre to spare.')).toBeVisible()

      await petra.goto(`/works/lines/${code}`)
      await hand.press(petra.getByRole('link', { name: 'Enter the day’s readings' }))
      const day = formOf(petra, `Readings of ${code}`)
      await hand.write(day.locator('[name$=".densityGPerMl"]'), '0.81')
      await hand.write(day.locator('[name$=".temperatureC"]'), '21')
      await hand.press(day.getByRole('button', { name: 'Store these readings' }))
      await expect(petra.getByText('0.81', { exact: false }).first()).toBeVisible()
    })

    test('Quill records an inspection at the bench', async ({ browser }) => {
      const quill = await atWork(browser, 'quill', hand.context)
      await open(quill, '/inspections/bench')
      const bench = formOf(quill, 'Record an inspection')
      const record = bench.getByRole('button', { name: 'No defect: record it' }).first()
      await expect(record).toBeVisible()
      await hand.write(bench.locator('[name="inspections.0.assembly"]'), 'RG-0007')
      await hand.press(record)
      await expect(quill.getByRole('status')).toContainText('RG-0007 is recorded: no defect.')
    })

    test('Audun verifies a trail and reads why a finding is so', async ({ browser }) => {
      const audun = await atWork(browser, 'audun', hand.context)
      await open(audun, '/trail')
      await hand.press(audun.getByRole('button', { name: 'Verify the trail' }))
      await expect(audun.getByText(/^All \d+ entries are as they were written/)).toBeVisible()
      await open(audun, '/findings/aspect-ratio')
      await hand.press(audun.getByRole('link', { name: 'Why is this so? The whole chain' }))
      await expect(audun.getByRole('heading', { name: 'The chain' })).toBeVisible()
    })

    test('Adela adds a person and reads the password that is shown once', async ({ browser }) => {
      const adela = await atWork(browser, 'adela', hand.context)
      await adela.goto('/people')
      const add = formOf(adela, 'Add a person')
      await hand.write(add.locator('[name="name"]'), `Noor ${code}`)
      await hand.write(add.locator('[name="email"]'), `${code.toLowerCase()}@demo.invalid`)
      await hand.press(add.getByRole('button', { name: 'Add the person' }))
      await expect(adela.getByText(`The one-time password of Noor ${code}`)).toBeVisible()
    })
  })
}
