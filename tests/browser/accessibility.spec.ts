import { expect, test, type Browser, type Page } from 'playwright/test'
import type { DemoPerson } from '@/seed/people'
import { STAGES } from '@/shared/plan/stage'
import { atWork, csvFile, formOf, send, unfold } from '@/tests/browser/at-work'
import { DESK, expectNoFault } from '@/tests/browser/no-fault'

/** A screen, as the person whose screen it is reaches it. */
type Screen = readonly [name: string, open: string | ((page: Page) => Promise<void>)]

const inLX41 = (path: string): string => `/programmes/LX-41${path}`
const inPX12 = (path: string): string => `/programmes/PX-12${path}`

/** Follows the first link of the main part whose address matches. */
const BOARDS_ADDRESS = '/works/suppliers/Calloway%20Boards'

const follow = (from: string, address: RegExp) => async (page: Page) => {
  await page.goto(from)
  const addresses = await page
    .getByRole('main')
    .locator('a[href]')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''))
  const first = addresses.find((href) => address.test(href))
  expect(first, `a link on ${from} to ${address}`).toBeDefined()
  await page.goto(first ?? from)
}

/** Sends a table and stays at its preview; nothing is stored by that. */
const preview = (at: string, text: string) => async (page: Page) => {
  await page.goto(at)
  const form = formOf(page, 'Import a CSV file')
  await unfold(form)
  await form.locator('[name="file"]').setInputFiles(csvFile('looked-at.csv', text))
  await form.getByRole('button', { name: 'Preview the file' }).click()
  await page.waitForURL(/\/import\?/)
}

const SCREENS: Readonly<Partial<Record<DemoPerson, readonly Screen[]>>> = {
  ines: [
    ['desk', '/'],
    ['programmes', '/programmes'],
    ['new programme', '/programmes/new'],
    ['own password', '/password'],
    ['no such page', '/programmes/LX-41/nowhere'],
    ['no such programme', '/programmes/NONE-1'],
    ['route card', inLX41('')],
    ['route card of a programme just opened', '/programmes/VP-3'],
    ['item of the specification', inLX41('/items/holes-and-lands')],
    ['item with conductors', inLX41('/items/conductors-and-spacings')],
    ['item of the evaluation', inLX41('/items/board-solderability')],
    ['item of the control', inLX41('/items/solder-bath')],
    ['item of the assessment', inLX41('/items/defects-against-budget')],
    ['item nobody has touched', '/programmes/VP-3/items/laminate'],
    ['item open at a form', inLX41('/items/holes-and-lands?revise=lead-holes')],
    ['new item', inLX41('/items/new')],
    ['find', '/find?q=flux&in=LX-41'],
    ['find, nothing found', '/find?q=zzzz'],
    [
      'the box that finds',
      async (page) => {
        await page.goto(inLX41(''))
        await page.getByRole('link', { name: 'Find', exact: true }).click()
        await page.getByRole('combobox', { name: 'Find anything' }).fill('flux')
        await expect(page.getByRole('option').first()).toBeVisible()
      },
    ],
    ['margins', inLX41('/margins')],
    ['margins of a programme just opened', '/programmes/VP-3/margins'],
    ['first values', '/programmes/VP-3/start'],
    ['tour', '/tour'],
    ['specification', inLX41('/specification')],
    ['parameter', inLX41('/specification/lead-holes')],
    ['limit', follow(inLX41('/items/holes-and-lands'), /\/limits\//)],
    ['finding', inLX41('/findings/lead-clearance')],
    ['finding over records', inLX41('/findings/defects-against-budget')],
    ...STAGES.map((stage): Screen => [`${stage} gate`, inLX41(`/gates/${stage}`)]),
    ['actions', inLX41('/actions')],
    ['one action', follow(inLX41('/actions'), /\/actions\/\d+$/)],
    ['lots', inLX41('/lots')],
    ['one lot', inLX41('/lots/B-2609')],
    ['sampling', inLX41('/sampling')],
    ['logs', inLX41('/logs')],
    ['one log', follow(inLX41('/logs'), /\/logs\/[^/?#]+$/)],
    ['inspections', inLX41('/inspections')],
    ['one inspection', follow(inLX41('/inspections'), /\/inspections\/[0-9a-f-]{36}$/)],
    ['guide to defects', inLX41('/inspections/guide')],
    ['agreement of inspectors', inLX41('/inspections/agreement')],
    ['residue', inLX41('/inspections/residue')],
    ['rework', inLX41('/inspections/rework')],
    ['charts of defects', inLX41('/defect-charts')],
    ['storage clock', inLX41('/storage')],
    ['ageing', inLX41('/ageing')],
    ['assemblies', inLX41('/assemblies')],
    ['one assembly', inLX41('/assemblies/LX41-0057')],
    ['instruments in use', inLX41('/instruments')],
    ['one gauge study', inLX41('/instruments/XF-01')],
    ['records', inLX41('/records')],
    ['one kind of record', inLX41('/records/training')],
    ['people of the programme', inLX41('/people')],
    ['trail', inLX41('/trail')],
    ['print', inLX41('/print')],
    ['options', inLX41('/options')],
    ['one option study', inLX41('/options/1')],
    ['new options', inLX41('/options/new?item=board-finish&alternatives=2')],
    ['reliability', inLX41('/reliability')],
    ['cost', inLX41('/cost')],
    ['lessons', '/lessons'],
    ['lessons of the programme', inLX41('/lessons')],
    ['new lesson', inLX41('/lessons/new')],
  ],
  quill: [
    ['blocked gate', inPX12('/gates/evaluation')],
    ['suppliers', '/works/suppliers'],
    ['one supplier', BOARDS_ADDRESS],
    ['the store', '/works/lots'],
    ['lot to be tested', `${BOARDS_ADDRESS}/lots/P-311?method=rotary-dip&by=hand`],
    [
      'preview of a lot’s test',
      preview(`${BOARDS_ADDRESS}/lots/P-311?method=rotary-dip`, 'specimen,place\n1,track\n'),
    ],
    ['parts', '/works/parts'],
    ['one part', follow('/works/parts', /\/works\/parts\/(?!new|many)[^/?#]+$/)],
    ['concession', askedConcession],
    ['records to be added', inPX12('/records/ionic-cleanliness')],
    ['inspections to be recorded', inPX12('/inspections')],
    ['bench', inPX12('/inspections/bench')],
    ['blind call', inLX41('/inspections/agreement/call')],
    ['people of the works', '/works/people'],
    ['one person of the works', follow('/works/people', /\/works\/people\/[^/?#]+$/)],
    ['one training', follow('/works/people/Goran%20Eide', /\/works\/people\/[^/]+\/[0-9a-f-]{36}$/)],
    ['company rules', '/works/company-rules?prefer=board-thickness'],
    ['specification against the company rules', inPX12('/specification')],
  ],
  petra: [
    [
      'preview of a log',
      async (page) => {
        await follow('/works', /\/logs\/[^/?#]+$/)(page)
        await preview(new URL(page.url()).pathname, 'at,density\n2026-13-01,0.8\n')(page)
      },
    ],
    ['lines to be stated', inPX12('/logs')],
    ['works', '/works'],
    ['one line', follow('/works', /\/works\/lines\/[^/?#]+$/)],
    ['a round of readings', follow('/works', /\/works\/lines\/[^/?#]+\/day$/)],
    ['a line for the wall', follow('/works', /\/works\/lines\/[^/?#]+\/wall$/)],
    ['one machine', follow('/works', /\/works\/machines\/[^/?#]+$/)],
    ['one log of a machine', follow('/works', /\/works\/machines\/[^/]+\/logs\/[^/?#]+$/)],
    ['programmes compared', '/works/programmes'],
  ],
  audun: [
    ['audit', '/audit'],
    ['trail read by the auditor', inLX41('/trail')],
    ['route card read by the auditor', inPX12('')],
  ],
  adela: [
    ['administration', '/administration'],
    ['people', '/people'],
    ['one person', follow('/people', /\/people\/[^/?#]+$/)],
    ['instruments', '/instruments'],
  ],
}

/** PX-12's boards wet too slowly; somebody has to have asked before there is a concession to look at. */
async function askedConcession(page: Page): Promise<void> {
  const finding = inPX12('/findings/rotary-dip-wetting-time')
  await page.goto(finding)
  const ask = formOf(page, 'Ask for a concession')
  if ((await ask.count()) > 0) {
    await ask.locator('[name="why"]').fill('For the bench, not for a customer.')
    await ask.locator('[name="quantity"]').fill('5')
    await send(page, ask.getByRole('button', { name: 'Ask for a concession' }))
  }
  await follow(finding, /\/concessions\/\d+$/)(page)
}

test('axe finds no fault on the sign-in', async ({ page }) => {
  await page.goto('/sign-in')
  await expectNoFault(page)
})

/** Screens with something on the phone that the desk does not show: drawers, stacked rows, the bench’s own order. */
const OTHER_ON_PHONE: ReadonlySet<string> = new Set([
  'desk',
  'route card',
  'item of the specification',
  'margins',
  'one lot',
  'works',
  'bench',
  'blind call',
  'trail',
  'people',
])

for (const [who, screens] of Object.entries(SCREENS) as [DemoPerson, readonly Screen[]][]) {
  test.describe(`axe finds no fault as ${who} sees`, () => {
    let page: Page
    // The specification is one long sheet, looked over at two widths.
    test.describe.configure({ timeout: 300_000 })
    test.beforeAll(async ({ browser }: { browser: Browser }) => {
      page = await atWork(browser, who)
    })
    test.afterAll(() => page.context().close())
    for (const [name, open] of screens) {
      test(name, async () => {
        await page.setViewportSize(DESK)
        if (typeof open === 'string') await page.goto(open)
        else await open(page)
        // A whole programme on one page, 17,000 elements that are the same at either width: axe looks once.
        await (name === 'print'
          ? expectNoFault(page, { sizes: [DESK] })
          : expectNoFault(page, { contrastOnPhone: OTHER_ON_PHONE.has(name) }))
      })
    }
  })
}
