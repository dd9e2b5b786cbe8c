import { strToU8, zipSync } from 'fflate'
import { expect, test, type Page } from 'playwright/test'
import { DEMO_PEOPLE } from '@/seed/people'
import { atWork, formOf, send } from '@/tests/browser/at-work'
import { expectNoFault } from '@/tests/browser/no-fault'
import { ProgrammeAtWork } from '@/tests/browser/programme-at-work'
import { at, drillMm, gerber } from '@/tests/rules/board/small-board'

const CODE = `BF-${Date.now() % 1_000_000}`
const programme = new ProgrammeAtWork(CODE)

/** A strip of six terminals: lands of 2 mm, or as they were drawn first, two of them too small for their holes. */
const PLACES = [0, 1, 2, 3, 4, 5].map((n) => [10 + 5.08 * n, 10] as const)
const lands = (side: string, small: boolean): string =>
  gerber(
    `%TF.FileFunction,Copper,${side}*%`,
    '%TA.AperFunction,ComponentPad*%',
    '%ADD10C,2.0*%',
    '%ADD11C,1.4*%',
    ...PLACES.flatMap(([x, y], n) => [
      `%TO.P,X1,${n + 1}*%`,
      small && n > 3 ? 'D11*' : 'D10*',
      `${at(x, y)}D03*`,
    ]),
  )
const OUTLINE = gerber(
  '%ADD10C,0.1*%',
  'D10*',
  `${at(0, 0)}D02*`,
  `${at(45, 0)}D01*`,
  `${at(45, 20)}D01*`,
  `${at(0, 20)}D01*`,
  `${at(0, 0)}D01*`,
)
const archive = (small: boolean): Buffer =>
  Buffer.from(
    zipSync({
      'strip-1.gbr': strToU8(lands('L1,Top', small)),
      'strip-2.gbr': strToU8(lands('L2,Bot', false)),
      // Neither its name nor its words say what it is.
      'strip-3.gbr': strToU8(OUTLINE),
      'strip-PTH.drl': strToU8(
        drillMm({ T1: 1.3 }, 'T1', ...PLACES.map(([x, y]) => `X${x.toFixed(3)}Y${y.toFixed(3)}`)),
      ),
      'strip-old.gbr': strToU8(lands('L1,Top', small).replace('M02*', '')),
      // The middle of the strip, in a unit that no line says.
      'strip-centres.csv': strToU8(
        'Designator,Mid X,Mid Y,Rotation,Layer\nX1,22.7,10,0,Top\nFID1,3,3,0,Top\n',
      ),
      'strip-parts.csv': strToU8('Designator,Part number,Qty\nX1,TERM-6,1\n'),
    }),
  )

const ringPlaces = (page: Page) =>
  page.getByRole('table', { name: 'Rings of the board’s holes: the worst places' })

async function attach(page: Page, name: string, small: boolean): Promise<void> {
  await programme.open(page, '/items/holes-and-lands#evidence')
  const form = formOf(page, 'Attach a file')
  await form
    .locator('[name="file"]')
    .setInputFiles({ name, mimeType: 'application/zip', buffer: archive(small) })
  await form.getByRole('button', { name: 'Attach the file' }).click()
  await page.getByRole('link', { name: new RegExp(`Read as board files.*${name}`) }).click()
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible()
}

/** Fills in the table of holes from the board that is open, with what its files cannot know, and saves it. */
async function adoptHoles(page: Page, archive: string, joints: readonly number[]): Promise<void> {
  await page.getByRole('link', { name: 'Fill in the form of Holes and leads with it' }).click()
  const form = formOf(page, 'Revise Holes and leads')
  await expect(form.locator('[name="reason"]')).toHaveValue(
    new RegExp(`From the board files ${archive} \\(SHA-256 [0-9a-f]{12}\\)`),
  )
  for (const [row, count] of joints.entries()) {
    const box = (name: string) => form.locator(`[name="value.${row}.${name}"]`).first()
    await expect(box('component')).toHaveValue('X1')
    await expect(box('joints')).toHaveValue(String(count))
    await expect(box('holeMm')).toHaveValue('1.3')
    for (const [name, value] of Object.entries(CHOSEN)) await box(name).selectOption(value)
    for (const [name, value] of Object.entries(TYPED)) await box(name).fill(value)
  }
  await send(page, form.getByRole('button', { name: /^Save as revision/ }))
  await expect(page.locator('#lead-holes')).toContainText(`From the board files ${archive}`)
}
const CHOSEN = { soldered: 'machine', leadShape: 'round', holeGiven: 'finished' }
const TYPED = { leadMm: '1', leadToleranceMm: '0.05', holeToleranceMm: '0.08' }

test('Tomas drops the board’s files, says what they are, sees two narrow rings and corrects them', async ({
  browser,
}) => {
  test.setTimeout(6 * 60_000)
  const ines = await atWork(browser, 'ines')
  const tomas = await atWork(browser, 'tomas')
  const petra = await atWork(browser, 'petra')
  const quill = await atWork(browser, 'quill')
  let board = ''
  await programme.begin(ines, 'Terminal strip')
  await programme.invite(ines, DEMO_PEOPLE.tomas.email, 'design')

  await test.step('the files are told apart, one is refused with its line, and nobody has confirmed them', async () => {
    await attach(tomas, 'strip-a.zip', true)
    await expect(tomas.getByText('nobody has confirmed it yet')).toBeVisible()
    await expect(tomas.getByLabel('What strip-1.gbr is')).toHaveValue('copper-top')
    await expect(tomas.getByLabel('What strip-3.gbr is')).toHaveValue('other')
    await expect(tomas.getByRole('row', { name: /strip-old\.gbr/ })).toContainText('The file breaks off')
    await expect(tomas.getByText('not found')).toBeVisible()
    await expect(tomas.getByLabel('What strip-centres.csv is')).toHaveValue('placement-mm')
    await expect(tomas.getByRole('row', { name: /strip-centres\.csv/ })).toContainText(
      'Unit not said: mm by its fit on the board, to be confirmed. 1 of 1 centres lie within the pins',
    )
    await expect(tomas.getByLabel('What strip-parts.csv is')).toHaveValue('parts-list')
    board = tomas.url()
  })

  await test.step('he says that the nameless one is the outline, and the board has its size', async () => {
    await tomas.getByLabel('What strip-3.gbr is').selectOption('outline')
    await send(tomas, tomas.getByRole('button', { name: 'Confirm the files' }))
    await expect(tomas.getByText('was confirmed by')).toBeVisible()
    await expect(tomas.getByText('45 mm × 20 mm')).toBeVisible()
    await expect(tomas.getByRole('row', { name: /strip-centres\.csv/ })).not.toContainText('Unit not said')
  })

  await test.step('he sees where components are placed, and which of them no list has', async () => {
    const placement = tomas.locator('#placement')
    await expect(placement).toContainText('2 components are placed: 2 on the top, 0 on the bottom.')
    await expect(placement.getByRole('row', { name: /Placed, not on the parts list/ })).toContainText('FID1')
    const joints = tomas.getByRole('table', { name: 'Joints by component' })
    await expect(joints.getByRole('row', { name: /^X1/ })).toContainText('22.7, 10')
  })

  await test.step('he adopts what the files know whole, together and for one reason', async () => {
    const form = formOf(tomas, 'Adopt values from the board files')
    await expect(form).toContainText('nothing → 45 mm')
    // Leads are not in the files: that table goes by its own form.
    await expect(form.getByLabel(/^Adopt Holes and leads/)).toHaveCount(0)
    await form.getByRole('button', { name: 'Adopt the ticked values' }).click()
    await expect(form).toContainText('Tick the values that you adopt.')
    for (const name of ['Parts list', 'Board along the travel', 'Board across the travel'])
      await form.getByLabel(`Adopt ${name} as the files have it`).check()
    await form.getByLabel('Why, for all that are ticked').fill('As the strip is drawn, revision A.')
    await send(tomas, form.getByRole('button', { name: 'Adopt the ticked values' }))
    await expect(tomas.locator('#follows').getByText('Stands as the files have it.')).toHaveCount(3)
    await programme.open(tomas, '/trail')
    const trail = tomas.getByRole('main')
    await expect(trail).toContainText('Adopted values from board files')
    for (const name of ['Parts list', 'Board along the travel', 'Board across the travel'])
      await expect(trail).toContainText(`${name}, revision 1`)
    await expect(trail).toContainText('As the strip is drawn, revision A.')
    await tomas.goto(board)
  })

  await test.step('he sees what follows from the files, and adopts the table of holes with what they cannot know', async () => {
    await programme.specify(tomas, 'hole-wall', 25, 'As ordered.')
    await programme.specify(tomas, 'producibility-level', 'B', 'As our board makers work.')
    await programme.specify(tomas, 'land-edition', 'ipc-2221', 'As drawn.')
    await tomas.goto(board)
    const follows = tomas.locator('#follows')
    await expect(follows.getByText('row added: X1')).toHaveCount(2)
    await adoptHoles(tomas, 'strip-a.zip', [4, 2])
    await tomas.goto(board)
  })

  await test.step('both narrow rings stand first, with pin and place', async () => {
    const rings = ringPlaces(tomas).getByRole('row')
    await expect(rings.nth(1)).toContainText('X1 pin 5')
    await expect(rings.nth(1)).toContainText('fails')
    await expect(rings.nth(2)).toContainText('X1 pin 6')
    await expect(rings.nth(2)).toContainText('fails')
    await expect(rings.nth(3)).toContainText('meets')
    await expectNoFault(tomas)
  })

  await test.step('Petra reads the board but fills in no table that is design’s', async () => {
    await petra.goto(tomas.url())
    await expect(ringPlaces(petra)).toBeVisible()
    await expect(petra.getByRole('link', { name: /Fill in the form/ })).toHaveCount(0)
    await expect(formOf(petra, 'Adopt values from the board files')).toHaveCount(0)
  })

  await test.step('he corrects the layout, and the rings of the new files are wide enough', async () => {
    await attach(tomas, 'strip-b.zip', false)
    await expect(ringPlaces(tomas).getByRole('row').nth(1)).toContainText('meets')
    await expect(ringPlaces(tomas)).not.toContainText('fails')
  })

  await test.step('beside the first files the two rings are told of, and the picture leads to one of them', async () => {
    await tomas.getByRole('link', { name: 'From strip-a.zip to this one' }).click()
    const rings = tomas.getByRole('table', { name: 'Rings that changed' }).getByRole('row')
    // Both changed alike, and are one row.
    await expect(rings).toHaveCount(2)
    await expect(rings.nth(1)).toContainText('X1 pin 5, top; X1 pin 6, top')
    await expect(rings.nth(1)).toContainText('0.05 mm')
    await expect(rings.nth(1)).toContainText('0.35 mm')
    // Nobody has said of the new files yet which of them is the outline.
    await expect(tomas.getByText('The outline was 45 mm × 20 mm')).toContainText('is not found')
    const top = tomas.getByRole('group', { name: /^Top copper/ })
    const seen = () => top.locator('svg').getAttribute('viewBox')
    const whole = await seen()
    await rings.nth(1).getByRole('link', { name: 'K1' }).click()
    await expect.poll(seen).not.toBe(whole)
    await top.focus()
    await tomas.keyboard.press('0')
    await expect.poll(seen).toBe(whole)
    await expectNoFault(tomas)
    await tomas.getByRole('link', { name: 'strip-b.zip' }).first().click()
  })

  await test.step('he confirms the new files and adopts their table: one row of six joints', async () => {
    await tomas.getByLabel('What strip-3.gbr is').selectOption('outline')
    await send(tomas, tomas.getByRole('button', { name: 'Confirm the files' }))
    await expect(tomas.getByText('was confirmed by')).toBeVisible()
    await adoptHoles(tomas, 'strip-b.zip', [6])
  })

  await test.step('at the bench Quill touches a joint of that board, and finds another by its pin', async () => {
    await programme.open(quill, '/inspections/bench')
    const plan = quill.getByRole('img', { name: /board’s plan, 45 by 20 mm/ })
    await plan.locator('circle', { hasText: 'X1-2' }).click()
    const first = quill.getByRole('group', { name: 'Defect 1' })
    await expect(first.getByLabel('Joint')).toHaveValue('X1-2')
    // Seen from below: 45 − (10 + 5.08).
    await expect(first.getByLabel('Across, mm')).toHaveValue('29.92')
    await expect(first.getByLabel('Up, mm')).toHaveValue('10')
    await first.getByLabel('Kind').fill('bridge')
    await quill.getByRole('group', { name: 'Defect 2' }).getByLabel('Joint').focus()
    await quill.getByLabel('Find a joint by reference and pin').fill('x1 5')
    await quill.keyboard.press('Enter')
    const second = quill.getByRole('group', { name: 'Defect 2' })
    await expect(second.getByLabel('Joint')).toHaveValue('X1-5')
    await expect(second.getByLabel('Across, mm')).toHaveValue('14.68')
    await expectNoFault(quill)
  })
})
