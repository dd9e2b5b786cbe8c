import { expect, test, type Page } from 'playwright/test'
import type { LotStory, LotTestStory } from '@/seed/level-transmitter/lot-story'
import { csvOf } from '@/seed/readings'
import { addDays } from '@/shared/quantity/calendar'
import { atWork, csvFile, enterAll, formOf, send, unfold } from '@/tests/browser/at-work'
import { chooseCsv, confirmImport } from '@/tests/browser/csv-import'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'
import { addSupplier, allocateLot, openLot, receiveLot, testLot } from '@/tests/browser/store-at-work'

const RUN = Date.now().toString(36).slice(-5).toUpperCase()
const today = new Date().toISOString().slice(0, 10)
const [PUMP, GAUGE] = [`PU-${RUN}`, `GA-${RUN}`]
const SUPPLIER = `Weir Laminates ${RUN}`
const PART = `bare board ${RUN}`
const TIMER = `T-${RUN}`
const CONDITIONS = {
  alloy: 'Sn60Pb40',
  flux: 'rosin-non-activated',
  bathTemperatureC: 235,
  ageing: 'none',
} as const

const lotOf = (number: number): LotStory => ({
  code: `${RUN}-${number}`,
  kind: 'bare board',
  part: PART,
  supplier: SUPPLIER,
  quantity: 200,
  supplierResult: '',
  tests: [],
})
/** Twenty specimens; of a slow lot one takes 5 s to wet. */
const dipped = (slow: boolean): LotTestStory => ({
  method: 'rotary-dip',
  instrument: TIMER,
  conditions: CONDITIONS,
  rows: Array.from({ length: 20 }, (_, at) => ({
    specimen: `s${at + 1}`,
    place: 'track',
    outcome: 'wetted',
    wettingTimeS: slow && at === 19 ? 5 : 1,
  })),
})

const asked = (page: Page) => page.getByRole('table', { name: 'What would turn, by programme' })
const whatWouldTurn = (page: Page) => page.getByRole('button', { name: 'What would turn' })

test.describe.serial('a supplier’s lots of one part go to two boards', () => {
  test.describe.configure({ timeout: 4 * 60_000 })
  const [pump, gauge] = [new ProgrammeAtWork(PUMP), new ProgrammeAtWork(GAUGE)]
  const [first, second, third] = [lotOf(1), lotOf(2), lotOf(3)]
  let ines: Page
  let petra: Page
  let quill: Page
  const instruments: Record<string, string> = {}
  test.beforeAll(async ({ browser }) => {
    ;[ines, petra, quill] = [
      await atWork(browser, 'ines'),
      await atWork(browser, 'petra'),
      await atWork(browser, 'quill'),
    ]
  })

  test('Adela adds the timer of the dip to the register', async ({ browser }) => {
    const adela = await atWork(browser, 'adela')
    await adela.goto('/instruments')
    const form = formOf(adela, 'Add an instrument')
    await enterAll(form, '', {
      tag: TIMER,
      measures: 'wetting time',
      calibratedOn: addDays(today, -30),
      dueOn: addDays(today, 300),
      certificate: 'C-17',
    })
    await send(adela, form.getByRole('button', { name: /^Add/ }))
    await adela.context().close()
  })

  test('both boards are to be evaluated by the same dip', async () => {
    for (const [programme, title] of [
      [pump, 'Pump driver'],
      [gauge, 'Pressure gauge'],
    ] as const) {
      await programme.begin(ines, title)
      const values = {
        'evaluation-lots-needed': [{ part: PART, kind: 'bare board', method: 'rotary-dip' }],
        'solderability-test-conditions': [{ method: 'rotary-dip', ...CONDITIONS }],
        'sampling-inspection-level': 'S-3',
        'sampling-aql': '1.0',
      }
      for (const [key, value] of Object.entries(values))
        await programme.specify(quill, key, value, 'As agreed.')
    }
  })

  test('three lots come in: two go to the pump, one to the gauge, whose own lot is good', async () => {
    await addSupplier(quill, SUPPLIER)
    for (const lot of [first, second, third]) await receiveLot(quill, lot, today)
    await allocateLot(petra, first, PUMP)
    await allocateLot(petra, second, PUMP)
    await allocateLot(petra, third, GAUGE)
    await openLot(quill, third, '?method=rotary-dip&by=hand')
    const named = quill.locator('[name="instrument"] option').filter({ hasText: TIMER })
    instruments[TIMER] = (await named.getAttribute('value')) ?? ''
    await testLot(quill, third, dipped(false), instruments)
    await testLot(quill, first, dipped(true), instruments)
    await gauge.open(quill, '/findings/inspection-state')
    await expect(quill.getByRole('main')).toContainText('normal')
  })

  test('before the second bad test is kept, Quill is told that the gauge is concerned too', async () => {
    await openLot(quill, second, '?method=rotary-dip')
    await chooseCsv(quill, csvFile('dip.csv', csvOf(dipped(true).rows)))
    const form = formOf(quill, 'Record the test')
    await enterAll(form, 'conditions.', CONDITIONS)
    await form.locator('[name="instrument"]').selectOption(instruments[TIMER] ?? '')
    await whatWouldTurn(quill).click()
    await expect(asked(quill).getByRole('row', { name: new RegExp(PUMP) })).toBeVisible()
    const concerned = asked(quill).getByRole('row', { name: new RegExp(GAUGE) })
    await expect(concerned).toBeVisible()
    await concerned.locator('summary').first().click()
    await expect(concerned).toContainText('tightened')
    const lots = await quill.context().newPage()
    await openLot(lots, second)
    await expect(lots.getByText('Not tested yet')).toBeVisible()
    await lots.close()
    await confirmImport(quill)
  })

  test('she rejects it, having seen for whom', async () => {
    await openLot(quill, second)
    const decide = formOf(quill, 'Disposition of the lot')
    await decide.getByRole('radio', { name: 'reject' }).check()
    await decide.locator('[name="reason"]').fill('One of twenty took 5 s to wet.')
    await decide.getByRole('button', { name: 'What would turn' }).click()
    await expect(asked(quill).getByRole('link', { name: PUMP })).toBeVisible()
    await expect(decide.locator('[name="reason"]')).toHaveValue('One of twenty took 5 s to wet.')
    await send(quill, decide.getByRole('button', { name: 'Record disposition' }))
    await expect(quill.getByText('rejected').first()).toBeVisible()
  })

  test('the gauge’s next lot is inspected tightened, and its page and the supplier’s say so', async () => {
    await gauge.open(quill, '/findings/inspection-state')
    await expect(quill.getByRole('main')).toContainText('tightened')
    await quill.goto(`/works/suppliers/${encodeURIComponent(SUPPLIER)}`)
    const series = quill.getByRole('table', { name: 'How the next lot is inspected' })
    await expect(series.getByRole('row', { name: new RegExp(GAUGE) })).toContainText('tightened')
  })
})

test.describe.serial('one person solders two boards', () => {
  test.describe.configure({ timeout: 4 * 60_000 })
  const WORKER = `Kirsti Holm ${RUN}`
  const [pump, gauge] = [new ProgrammeAtWork(`${PUMP}P`), new ProgrammeAtWork(`${GAUGE}P`)]
  let petra: Page
  test.beforeAll(async ({ browser }) => {
    petra = await atWork(browser, 'petra')
    const ines = await atWork(browser, 'ines')
    await pump.begin(ines, 'Pump driver')
    await gauge.begin(ines, 'Pressure gauge')
  })

  test('her examination is recorded once, and counts for both', async () => {
    await pump.addTraining(petra, {
      worker: WORKER,
      skill: 'hand-soldering',
      passedOn: addDays(today, -400),
      certificate: 'K-17',
      expiresOn: addDays(today, 30),
    })
    for (const programme of [pump, gauge]) {
      await programme.addRecord(petra, 'soldering-run', {
        doneOn: today,
        worker: WORKER,
        skill: 'hand-soldering',
        assemblies: 3,
      })
      await programme.open(petra, '/findings/trained-people')
      await expect(petra.getByRole('main')).toContainText(/meets|marginal/)
    }
  })

  test('its last day was typed wrong: set right, it had lapsed, and Petra sees where before she saves', async () => {
    await petra.goto(`/works/people/${encodeURIComponent(WORKER)}`)
    await petra.getByRole('link', { name: /Certificates, correct or withdraw/ }).click()
    const form = formOf(petra, 'Correct this record')
    await unfold(form.locator('[name="reason"]'))
    await enterAll(form, '', {
      'values.expiresOn': addDays(today, -1),
      reason: 'The certificate says yesterday.',
    })
    await form.getByRole('button', { name: 'What would turn' }).click()
    for (const code of [`${PUMP}P`, `${GAUGE}P`])
      await expect(asked(petra).getByRole('row', { name: new RegExp(code) })).toContainText('fails')
    await send(petra, form.getByRole('button', { name: 'Correct this record' }))
  })

  test('each board that she solders fails for it', async () => {
    for (const programme of [pump, gauge]) {
      await programme.open(petra, '/findings/trained-people')
      await expect(petra.getByRole('main')).toContainText(WORKER)
      await expect(petra.getByRole('main')).toContainText('fails')
    }
    await petra.goto('/works/people')
    await expect(petra.getByRole('row', { name: new RegExp(WORKER) })).toContainText('lapsed')
  })
})
