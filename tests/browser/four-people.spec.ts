import { expect, test, type Page } from 'playwright/test'
import { LEVEL_TRANSMITTER } from '@/seed/boards/level-transmitter'
import { LEADS_FORMED, PROCESS } from '@/seed/level-transmitter/control'
import { gaugeStudies } from '@/seed/level-transmitter/gauge-study'
import { logsAt } from '@/seed/level-transmitter/logs'
import { lotsFor, SOLDERED_LOTS } from '@/seed/level-transmitter/lots'
import { groupedBy } from '@/shared/grouped-by'
import type { Stage } from '@/shared/plan/stage'
import { atWork, enterAll, formOf, send, unfold } from '@/tests/browser/at-work'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'
import {
  acceptLot,
  addSupplier,
  allocateLot,
  openLot,
  receiveLot,
  testLot,
} from '@/tests/browser/store-at-work'
import { WorksAtWork } from '@/tests/browser/works-at-work'

const CODE = 'ST-9'
const LINE = 'Line of ST-9'
const today = new Date().toISOString().slice(0, 10)
const TEN_MINUTES_MS = 10 * 60_000
const FORTNIGHT_MS = 14 * 86_400_000
const assemblies = Array.from({ length: 160 }, (_, index) => `ST9-${index + 1}`)

test.describe.serial('four people take a new programme from opening to in service', () => {
  test.describe.configure({ timeout: 6 * 60_000 })
  const programme = new ProgrammeAtWork(CODE)
  const works = new WorksAtWork(LINE)
  let ines: Page
  let petra: Page
  let quill: Page
  let audun: Page
  let instruments: Record<string, string> = {}

  test.beforeAll(async ({ browser }) => {
    ines = await atWork(browser, 'ines')
    petra = await atWork(browser, 'petra')
    quill = await atWork(browser, 'quill')
    audun = await atWork(browser, 'audun')
  })

  test('Ines, the design engineer, opens it and invites the others', async () => {
    await programme.begin(ines, 'Sight-glass transmitter')
  })

  test('she specifies the board; the others cannot sign a gate that is blocked', async () => {
    for (const [key, value] of Object.entries(LEVEL_TRANSMITTER)) {
      const own = JSON.parse(JSON.stringify(value).replaceAll('LX-41', CODE)) as unknown
      await programme.specify(ines, key, own, 'Proposed for the design review.')
    }
    await programme.open(quill, '/gates/specification')
    await expect(quill.getByText(/The gate is blocked\./).first()).toBeVisible()
    await programme.attachFile(
      ines,
      'holes-and-lands',
      'drawing',
      'ST-9-drill-chart.txt',
      'ST-9 revision A, drill chart.',
    )
  })

  test('Ines asks what nickel costs; Petra, in production, answers; Ines accepts', async () => {
    await programme.open(ines, '/items/lead-finish')
    await ines.locator('summary', { hasText: 'Ask another department' }).click()
    const ask = formOf(ines, 'Ask another department')
    await enterAll(ask, '', {
      from: 'design',
      to: 'production',
      kind: 'cost',
      question: 'What does nickel under the tin cost a board?',
      dueOn: '2099-01-31',
    })
    await send(ines, ask.getByRole('button', { name: 'Ask' }))
    await petra.goto('/')
    await petra
      .getByRole('link', { name: /What does nickel under the tin cost/ })
      .first()
      .click()
    const answer = formOf(petra, 'Your answer')
    await answer.getByRole('radio', { name: 'Yes', exact: true }).check()
    await enterAll(answer, '', {
      'amounts.0.kind': 'piece',
      'amounts.0.per': 'board',
      'amounts.0.amount': '0.42',
      'amounts.1.kind': 'lead time',
      'amounts.1.amount': '10',
      comment: 'Both suppliers plate it as standard.',
    })
    await send(petra, answer.getByRole('button', { name: 'Send the answer' }))
    await programme.open(ines, '/actions/1')
    await send(ines, formOf(ines, 'Accept the answer').getByRole('button', { name: 'Accept the answer' }))
  })

  const gate = async (stage: Stage) => {
    for (const [page, department] of [
      [ines, 'design'],
      [petra, 'production'],
      [quill, 'quality'],
    ] as const)
      await programme.approve(page, stage, department)
    for (const [page, department] of [
      [ines, 'design'],
      [petra, 'production'],
      [quill, 'quality'],
    ] as const)
      await programme.signGate(page, stage, department)
    await programme.open(quill, `/gates/${stage}`)
    await expect(quill.getByRole('main').getByText('open', { exact: true }).first()).toBeVisible()
  }
  test('all three approve, and the specification gate opens', async () => {
    await gate('specification')
  })

  test('Quill, in quality, receives, tests and releases what is bought in', async () => {
    // Suppliers are called otherwise than those of the demo, whose deliveries would be in one series with these.
    const lots = lotsFor(CODE).map((lot) => ({ ...lot, supplier: `${lot.supplier} of ${CODE}` }))
    for (const supplier of new Set(lots.map((lot) => lot.supplier))) await addSupplier(quill, supplier)
    for (const lot of lots) {
      await receiveLot(quill, lot, today)
      await allocateLot(quill, lot, CODE)
    }
    await openLot(
      quill,
      lots.find(({ code }) => code === 'B-2609')!,
      '?method=rotary-dip&by=hand',
    )
    instruments = Object.fromEntries(
      (await quill
        .locator('[name="instrument"] option')
        .evaluateAll((options) =>
          options.map((option) => [
            option.textContent?.split(':')[0] ?? '',
            (option as HTMLOptionElement).value,
          ]),
        )) as [string, string][],
    )
    for (const lot of lots) for (const tested of lot.tests) await testLot(quill, lot, tested, instruments)
    for (const lot of lots) await acceptLot(quill, lot)
    const studies = groupedBy(gaugeStudies(), ({ instrumentTag, study }) => `${instrumentTag}\n${study}`)
    for (const [named, rows] of studies) {
      const [tag = '', study = ''] = named.split('\n')
      const cells = rows.map(({ part, appraiser, trial, reading }) => ({ part, appraiser, trial, reading }))
      await programme.recordStudy(quill, tag, study, cells as Record<string, string | number>[])
    }
    for (const code of SOLDERED_LOTS) {
      await programme.open(petra, `/lots/${code}`)
      const trace = formOf(petra, 'Record assemblies')
      await trace.locator('[name="assemblies"]').fill(assemblies.join(' '))
      await send(petra, trace.getByRole('button', { name: 'Record assemblies' }))
    }
    await gate('evaluation')
  })

  test('Petra sets the process, logs it from the machines’ files, and answers the charts', async () => {
    await programme.specify(ines, 'chip-capacitors-in-wave', false, 'There are none on the board.')
    for (const [key, value] of Object.entries(PROCESS))
      await programme.specify(petra, key, value, 'Agreed at the process review.')
    for (const skill of ['machine-soldering', 'hand-soldering', 'component-preparation', 'rework']) {
      await programme.addTraining(petra, {
        worker: 'Goran Eide',
        skill,
        passedOn: '2026-01-20',
        expiresOn: '2099-12-31',
        certificate: `TR-${skill}`,
      })
    }
    for (const skill of ['inspection', 'solderability-testing']) {
      await programme.addTraining(quill, {
        worker: 'Quill Amaro',
        skill,
        passedOn: '2026-01-20',
        expiresOn: '2099-12-31',
        certificate: `TR-${skill}`,
      })
    }
    // The day's runs are judged by the day's readings: just after midnight these stand closer.
    const sinceMidnightMs = Date.now() - Date.parse(`${today}T00:00Z`)
    const stepMs = Math.min(TEN_MINUTES_MS, Math.floor(sinceMidnightMs / 20))
    const start = Date.now() - 20 * stepMs
    const instants = Array.from({ length: 20 }, (_, index) => start + index * stepMs)
    // A trend wants four analyses, a fortnight apart; the newest is of today.
    const analyses = [3, 2, 1, 0].map((fortnights) => start - fortnights * FORTNIGHT_MS)
    // Machines and logs are called otherwise than those of the demo's own line.
    const logs = logsAt({ instants, analyses, store: instants }).map((log) => ({
      ...log,
      code: `${CODE} ${log.code}`,
      machine: `${CODE} ${log.machine}`,
    }))
    await works.openLine(petra, 'The line of this story')
    for (const machine of new Set(logs.map((log) => log.machine)))
      await works.openMachine(petra, machine, 'other')
    for (const log of logs) {
      await works.openLog(petra, log.machine, log, instruments)
      await works.importReadings(petra, log.machine, log)
    }
    await programme.stateLine(petra, LINE)
    for (const skill of ['machine-soldering', 'hand-soldering']) {
      await programme.addRecord(petra, 'soldering-run', {
        doneOn: today,
        worker: 'Goran Eide',
        skill,
        assemblies: 160,
        lots: SOLDERED_LOTS.join(', '),
        line: LINE,
      })
    }
    await programme.addRecord(petra, 'lead-forming', { checkedOn: today, ...LEADS_FORMED })
    for (const { machine, code } of logs) await works.answerSignals(petra, machine, code)
    await gate('control')
  })

  test('Quill inspects every assembly against the budget, and the last gate opens', async () => {
    await programme.specify(quill, 'inspected-assemblies-share', 100, 'A first series is looked at whole.')
    await programme.specify(quill, 'insulation-test', 'j-std-004a', 'As the flux was qualified.')
    await programme.open(quill, '/inspections')
    const many = formOf(quill, 'Record many inspections')
    await unfold(many)
    await enterAll(many, '', {
      inspector: 'Quill Amaro',
      magnification: 4,
      lines: assemblies.map((assembly) => `${assembly}; 306`).join('\n'),
    })
    await send(quill, many.getByRole('button', { name: 'Record them all, or none' }))
    for (const assembly of ['ST9-10', 'ST9-80', 'ST9-150'])
      await programme.addRecord(quill, 'ionic-cleanliness', {
        testedOn: today,
        assembly,
        method: 'manual',
        concentrationUgPerMl: 0.42,
        solventMl: 500,
        lengthMm: 160,
        widthMm: 100,
        componentAllowancePct: 10,
        minutes: 10,
        solventC: 23,
      })
    await programme.addRecord(petra, 'flux-removal', {
      triedOn: today,
      assembly: 'ST9-10',
      cleaning: 'saponified water, 55 °C, rinsed twice',
      beforeUgPerCm2: 6.2,
      afterUgPerCm2: 0.6,
      residue: 'none',
    })
    for (const pattern of ['comb B on coupon 1', 'comb B on coupon 2', 'comb B on coupon 3'])
      for (const hours of [24, 96, 168])
        await programme.addRecord(quill, 'insulation-resistance', {
          testedOn: today,
          pattern,
          condition: 'j-std-004a',
          hours,
          resistanceMOhm: 2400,
          ...(hours === 168 && { look: 'clean' }),
        })
    await programme.addRecord(petra, 'electrical-test', {
      testedOn: today,
      assembly: 'ST9-1 to ST9-160',
      tested: 160,
      passedFirst: 160,
      jointFailures: 0,
    })
    await gate('assessment')
    await programme.open(ines)
    await expect(ines.getByText('In service')).toBeVisible()
  })

  test('Audun, the auditor, reads why and verifies the trail', async () => {
    await programme.open(audun, '/trail')
    await audun.getByRole('button', { name: 'Verify the trail' }).click()
    await expect(audun.getByText(/entries are as they were written/)).toBeVisible()
    await programme.open(audun, '/findings/defects-against-budget')
    await expect(audun.getByText('Quill Amaro').first()).toBeVisible()
  })

  test('a late change shows at once which gates no longer stand', async () => {
    await programme.open(ines, '/items/laminate')
    const form = formOf(ines, 'Revise Board thickness')
    await form.locator('summary').first().click()
    await form.locator('[name="value"]').fill('2')
    await form.locator('[name="reason"]').fill('Stiffer against vibration.')
    await send(ines, form.getByRole('button', { name: /^Save as revision/ }))
    await programme.open(ines, '/gates/specification')
    await expect(ines.getByText('lapsed').first()).toBeVisible()
  })
})
