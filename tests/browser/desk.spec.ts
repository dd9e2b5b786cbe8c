import { expect, test } from 'playwright/test'
import { atWork, formOf, listensForNews, send } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'

/** A programme of its own, which is not the demo. */
const MARK = Date.now().toString(36).toUpperCase()
const QUESTION = `Can the wave line take 2.4 mm boards? ${MARK}`
const AGAIN = `And by when would that be? ${MARK}`
const DAY_MS = 86_400_000
const day = (ahead: number): string => new Date(Date.now() + ahead * DAY_MS).toISOString().slice(0, 10)

test('Ines sees what she can do now, asks Petra, is away, and Tomas stands in for her by name', async ({
  browser,
}) => {
  const ines = await atWork(browser, 'ines')
  const petra = await atWork(browser, 'petra')
  const tomas = await atWork(browser, 'tomas')
  const own = new ProgrammeAtWork(`DK-${MARK}`)
  /** Types a question of Ines to production; answers the button that sends it. */
  const asked = async (question: string, daysAhead: number) => {
    await own.open(ines, '/items/programme-frame')
    const form = formOf(ines, 'Ask another department')
    await form.locator('summary').first().click()
    await form.locator('[name="to"]').selectOption('production')
    await form.locator('[name="question"]').fill(question)
    await form.locator('[name="dueOn"]').fill(day(daysAhead))
    return form.getByRole('button').last()
  }

  await test.step('a new programme lays its first values on her desk', async () => {
    await own.begin(ines, `Pump driver ${MARK}`)
    await ines.goto('/')
    const work = ines.locator('#own-work')
    await expect(work.getByRole('heading')).toContainText('Your own work')
    await expect(work.getByRole('link', { name: /^Specify\b/ }).first()).toBeVisible()
  })

  await test.step('her question is on Petra’s desk, and hers says for whom she waits', async () => {
    const sending = await asked(QUESTION, 9)
    // Petra's desk is open meanwhile, and renews itself.
    const listens = listensForNews(petra)
    await petra.goto('/')
    await listens
    await send(ines, sending)
    await expect(petra.locator('#others-wait').getByRole('link', { name: QUESTION })).toBeVisible()
    await ines.goto('/')
    await expect(ines.locator('#you-wait').getByRole('link', { name: QUESTION })).toBeVisible()
  })

  await test.step('while the network is away Petra’s desk stays as it is, and renews itself when it is back', async () => {
    let isAway = true
    let loads = 0
    petra.on('load', () => loads++)
    await petra.route('**/*', (route) => (isAway ? route.abort() : route.continue()))
    const failed = petra.waitForEvent('requestfailed')
    await send(ines, await asked(AGAIN, 8))
    await failed
    await expect(petra.locator('#others-wait').getByRole('link', { name: QUESTION })).toBeVisible()
    isAway = false
    await expect(petra.locator('#others-wait').getByRole('link', { name: AGAIN })).toBeVisible()
    expect(loads).toBe(0)
    await petra.unroute('**/*')
    await ines.goto('/')
  })

  await test.step('she names Tomas for a week; the programme is on his desk, for her', async () => {
    await ines.getByRole('link', { name: 'Away, daily mail, calendar' }).click()
    const form = formOf(ines, 'Name who stands in')
    await form.locator('[name="delegate"]').selectOption({ label: 'Tomas Lindqvist' })
    await form.locator('[name="toOn"]').fill(day(7))
    await send(ines, form.getByRole('button'))
    await expect(ines.getByText(/stands in for you/)).toBeVisible()
    await tomas.goto('/')
    await expect(tomas.getByText('You stand in')).toBeVisible()
    await expect(tomas.getByRole('link', { name: `DK-${MARK}` }).first()).toBeAttached()
  })

  await test.step('what he specifies there is in the trail as his, for her', async () => {
    await own.specify(tomas, 'service-years', 15, 'The customer’s frame order says fifteen years.')
    await own.open(tomas, '/trail?text=revised+service+years')
    await expect(tomas.getByRole('cell', { name: /, for Ines/ }).first()).toBeVisible()
    await expect(tomas.getByText('The customer’s frame order says fifteen years.').first()).toBeVisible()
  })

  await test.step('she ends it, and he no longer reads the programme', async () => {
    await ines.goto('/desk-settings')
    await send(ines, formOf(ines, 'End it').getByRole('button'))
    await own.open(tomas)
    await expect(tomas.getByText('You are not a member of this programme.')).toBeVisible()
  })

  await test.step('the calendar’s secret address is shown once, answers a calendar program, and can be stopped', async () => {
    await petra.goto('/desk-settings')
    const stop = formOf(petra, 'Stop the calendar')
    if (await stop.isVisible()) await send(petra, stop.getByRole('button'))
    await formOf(petra, 'Make a calendar address').getByRole('button').click()
    const address = await petra.locator('.shown-once').innerText()
    const secret = new URL(address).pathname
    expect(await (await petra.request.get(secret)).text()).toContain('BEGIN:VCALENDAR')
    await petra.reload()
    await send(petra, formOf(petra, 'Stop the calendar').getByRole('button'))
    expect((await petra.request.get(secret)).status()).toBe(404)
  })

  await test.step('the summary tells decisions, exceptions and signatures', async () => {
    await own.open(ines, '/print/summary')
    for (const heading of ['Signatures', 'Exceptions', 'Decisions'])
      await expect(ines.getByRole('heading', { name: heading })).toBeVisible()
    await expect(ines.getByText('The customer’s frame order says fifteen years.')).toBeVisible()
  })
})
