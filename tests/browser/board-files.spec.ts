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

test('Tomas drops the board’s files, says what they are, sees two narrow rings and corrects them', async ({
  browser,
}) => {
  test.setTimeout(6 * 60_000)
  const ines = await atWork(browser, 'ines')
  const tomas = await atWork(browser, 'tomas')
  const petra = await atWork(browser, 'petra')
  await programme.begin(ines, 'Terminal strip')
  await programme.invite(ines, DEMO_PEOPLE.tomas.email, 'design')

  await test.step('the files are told apart, one is refused with its line, and nobody has confirmed them', async () => {
    await attach(tomas, 'strip-a.zip', true)
    await expect(tomas.getByText('nobody has confirmed it yet')).toBeVisible()
    await expect(tomas.getByLabel('What strip-1.gbr is')).toHaveValue('copper-top')
    await expect(tomas.getByLabel('What strip-3.gbr is')).toHaveValue('other')
    await expect(tomas.getByRole('row', { name: /strip-old\.gbr/ })).toContainText('The file breaks off')
    await expect(tomas.getByText('not found')).toBeVisible()
  })

  await test.step('he says that the nameless one is the outline, and the board has its size', async () => {
    await tomas.getByLabel('What strip-3.gbr is').selectOption('outline')
    await send(tomas, tomas.getByRole('button', { name: 'Confirm the files' }))
    await expect(tomas.getByText('was confirmed by')).toBeVisible()
    await expect(tomas.getByText('45 mm × 20 mm')).toBeVisible()
  })

  await test.step('both narrow rings stand first, with pin and place', async () => {
    const rings = ringPlaces(tomas).getByRole('row')
    await expect(rings.nth(1)).toContainText('0.05 mm')
    await expect(rings.nth(1)).toContainText('X1 pin 5')
    await expect(rings.nth(2)).toContainText('X1 pin 6')
    await expect(rings.nth(3)).toContainText('0.35 mm')
    await expectNoFault(tomas)
  })

  await test.step('Petra reads the board but fills in no table that is design’s', async () => {
    await petra.goto(tomas.url())
    await expect(ringPlaces(petra)).toBeVisible()
    await expect(petra.getByRole('link', { name: /Fill in the table/ })).toHaveCount(0)
  })

  await test.step('he corrects the layout, and the rings of the new files are wide enough', async () => {
    await attach(tomas, 'strip-b.zip', false)
    await expect(ringPlaces(tomas).getByRole('row').nth(1)).toContainText('0.35 mm')
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

  await test.step('the table of holes is filled in from the new files', async () => {
    await tomas.getByRole('link', { name: 'Fill in the table of holes and leads from these files' }).click()
    const form = formOf(tomas, 'Revise Holes and leads')
    await expect(form.locator('[name="value.0.component"]')).toHaveValue('X1')
    await expect(form.locator('[name="value.0.joints"]')).toHaveValue('6')
    await expect(form.locator('[name="value.0.holeMm"]')).toHaveValue('1.3')
    await expect(form.locator('[name="value.0.landMm"]')).toHaveValue('2')
    await expect(form.locator('[name="reason"]')).toHaveValue(
      /From the board files strip-b\.zip \(SHA-256 [0-9a-f]{12}\)/,
    )
    for (const [name, value] of Object.entries({
      soldered: 'machine',
      leadShape: 'round',
      holeGiven: 'finished',
    }))
      await form.locator(`[name="value.0.${name}"]`).first().selectOption(value)
    for (const [name, value] of Object.entries({
      leadMm: '1',
      leadToleranceMm: '0.05',
      holeToleranceMm: '0.08',
    }))
      await form.locator(`[name="value.0.${name}"]`).fill(value)
    await send(tomas, form.getByRole('button', { name: /^Save as revision/ }))
    await expect(tomas.locator('#lead-holes')).toContainText('From the board files strip-b.zip')
  })
})
