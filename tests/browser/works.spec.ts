import { expect, test, type Page } from 'playwright/test'
import { atWork, enterAll, formOf, send } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'
import { WorksAtWork } from '@/tests/browser/works-at-work'

const RUN = Date.now().toString(36).slice(-5).toUpperCase()
const LINE = `Line ${RUN}`
const FLUXER = `Fluxer ${RUN}`
const LOG = `FLUX ${RUN}`
const [ONE, OTHER] = [`WA-${RUN}`, `WB-${RUN}`]
const today = new Date().toISOString().slice(0, 10)
const FLUX = {
  'flux-control-method': 'density',
  'flux-solids': 18,
  'flux-density-target': 0.812,
  'flux-density-tolerance': 0.01,
  'flux-reference-temperature': 25,
  'flux-density-coefficient': 0.00085,
  'thinner-density': 0.785,
  'flux-tank-volume': 20,
}

test.describe.serial('one line of the works serves two programmes', () => {
  test.describe.configure({ timeout: 4 * 60_000 })
  const works = new WorksAtWork(LINE)
  const programmes = [new ProgrammeAtWork(ONE), new ProgrammeAtWork(OTHER)] as const
  let ines: Page
  let petra: Page
  test.beforeAll(async ({ browser }) => {
    ines = await atWork(browser, 'ines')
    petra = await atWork(browser, 'petra')
  })

  test('Petra opens the line, its fluxer and a log, once', async () => {
    await works.openLine(petra, 'Wave line of this story')
    await works.openMachine(petra, FLUXER, 'fluxer')
    await works.openLog(petra, FLUXER, { code: LOG, characteristic: 'flux-density', instrument: null })
    await expect(petra.getByRole('heading', { level: 1 })).toContainText(LOG)
  })

  test('both programmes state it and are soldered there; one wants a wider window than the other', async () => {
    for (const [programme, tolerance] of [
      [programmes[0], 0.01],
      [programmes[1], 0.05],
    ] as const) {
      await programme.begin(ines, 'A board of the shared line')
      await programme.specify(ines, 'soldering-process', 'wave', 'As agreed.')
      for (const [key, value] of Object.entries({ ...FLUX, 'flux-density-tolerance': tolerance }))
        await programme.specify(petra, key, value, 'As agreed.')
      await programme.stateLine(petra, LINE)
      await programme.addRecord(petra, 'soldering-run', {
        doneOn: today,
        worker: 'Goran Eide',
        skill: 'machine-soldering',
        assemblies: 5,
        line: LINE,
      })
    }
  })

  test('a round of readings is typed once, in one form', async () => {
    await petra.goto(`/works/lines/${encodeURIComponent(LINE)}/day`)
    const form = formOf(petra, `Readings of ${LINE}`)
    await send(petra, form.getByRole('button', { name: 'Store these readings' })).catch(() => undefined)
    await expect(petra.getByText('Nothing is typed yet.')).toBeVisible()
    await enterAll(form, 'logs.0.reading.', { densityGPerMl: 0.84, temperatureC: 25 })
    await send(petra, form.getByRole('button', { name: 'Store these readings' }))
    await expect(petra.getByRole('row', { name: new RegExp(LOG) })).toContainText(ONE)
  })

  test('it lies outside one programme’s window and inside the other’s, and the machine’s page says so by programme', async () => {
    await works.open(petra, FLUXER, LOG)
    const rowOf = (code: string) => petra.getByRole('row', { name: new RegExp(code) }).first()
    await expect(rowOf(ONE)).toContainText('fails')
    await expect(rowOf(OTHER)).toContainText(/meets|marginal/)
    for (const [code, verdict] of [
      [ONE, /fails/],
      [OTHER, /undetermined|meets|marginal/],
    ] as const) {
      await petra.goto(`/programmes/${code}/findings/flux-density`)
      await expect(petra.getByRole('main')).toContainText(verdict)
    }
  })

  test('the cause is given once, at the machine', async () => {
    await works.answerSignals(petra, FLUXER, LOG)
    await works.open(petra, FLUXER, LOG)
    await expect(petra.getByText('Read before the machine had settled.').first()).toBeVisible()
    await petra.goto(`/programmes/${ONE}/records/signal-answer`)
    await expect(petra.getByText('Read before the machine had settled.').first()).toBeVisible()
  })

  test('an answer is put right where it was given, and the limits are set again for every programme', async () => {
    await works.open(petra, FLUXER, LOG)
    await petra
      .getByRole('link', { name: /^Open the answer to/ })
      .first()
      .click()
    const correct = formOf(petra, 'Correct this record')
    await correct.locator('summary').click()
    await correct.locator('[name="values.cause"]').fill('Read while the nozzle was changed.')
    await correct.locator('[name="reason"]').fill('Goran told us what it was.')
    await send(petra, correct.getByRole('button', { name: 'Correct this record' }))

    await works.open(petra, FLUXER, LOG)
    await expect(petra.getByText('Read while the nozzle was changed.').first()).toBeVisible()
    const again = formOf(petra, 'Set the limits again from a day on')
    await again.locator('summary').click()
    await enterAll(again, 'rows.0.', { startsOn: today, name: 'New nozzle' })
    await again.getByRole('button', { name: 'What would turn' }).click()
    await expect(again.getByRole('status')).toContainText(/nothing|No /i)
    await send(petra, again.getByRole('button', { name: 'Set them again' }))
    await expect(petra.getByRole('row', { name: /New nozzle/ })).toBeVisible()
    for (const code of [ONE, OTHER]) {
      await petra.goto(`/programmes/${code}/records/chart-reset`)
      await expect(petra.getByText('New nozzle').first()).toBeVisible()
    }
  })

  test('the view for a wall shows the line and asks for itself again', async () => {
    const wall = await petra.context().newPage()
    await wall.goto(`/works/lines/${encodeURIComponent(LINE)}/wall`)
    await expect(wall.getByRole('heading', { level: 1 })).toContainText(LINE)
    await wall.clock.install()
    await wall.reload()
    let asksAgain = false
    wall.on('request', (request) => (asksAgain ||= request.url().includes('/wall')))
    // Its clock is only set once its scripts run.
    await expect(async () => {
      await wall.clock.fastForward(61_000)
      expect(asksAgain).toBe(true)
    }).toPass()
    await wall.close()
  })

  test('the machine’s trail tells of it, and is whole', async () => {
    await petra.goto(`/works/trails/machine/${encodeURIComponent(FLUXER)}?verify=now`)
    await expect(petra.getByText(/entries are as they were written/)).toBeVisible()
    await expect(petra.getByText('Added readings to a log').last()).toBeVisible()
  })
})
