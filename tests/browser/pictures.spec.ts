import { expect, test, type Page } from 'playwright/test'
import { atWork } from '@/tests/browser/at-work'
import { DESK, PHONE } from '@/tests/browser/no-fault'
import { pictureFaults } from '@/tests/browser/picture-faults'

const inLX41 = (path: string): string => `/programmes/LX-41${path}`
const inPX12 = (path: string): string => `/programmes/PX-12${path}`

/** Screens of which each links to those it is about, and the addresses of those. */
const LISTS: readonly (readonly [list: string, shown: RegExp])[] = [
  [inLX41(''), /\/items\/(?!new)[^/?#]+$/],
  [inLX41('/logs'), /\/LX-41\/logs\/[^/?#]+$/],
  [inLX41('/lots'), /\/LX-41\/lots\/[^/?#]+$/],
  [inLX41('/instruments'), /\/LX-41\/instruments\/[^/?#]+$/],
  [inLX41('/inspections/rework'), /\/inspections\/(residue|rework|agreement|guide)$/],
  [inPX12('/lots'), /\/PX-12\/lots\/[^/?#]+$/],
]
/** Screens with pictures that no list leads to. */
const ALONE = [
  ...['', '/reliability', '/cost', '/sampling', '/inspections', '/defect-charts', '/ageing'].map(inLX41),
  ...['/storage', '/options/1', '/margins'].map(inLX41),
  inPX12('/items/holes-and-lands'),
  '/works/lines/Line%201',
  '/works/machines/Wave%201/logs/BATH-1',
]
/** Fewer and the test would look past most of what is drawn. */
const PICTURES_AT_LEAST = 60

const linksOf = async (page: Page, [list, shown]: (typeof LISTS)[number]): Promise<string[]> => {
  await page.goto(list)
  const addresses = await page
    .getByRole('main')
    .locator('a[href]')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''))
  const own = [...new Set(addresses.filter((address) => shown.test(address)))]
  expect(own.length, `links on ${list} to ${shown}`).toBeGreaterThan(0)
  return own
}

/* On a desk and on a phone; whoever reads a programme sees the same pictures. */
test('every text of every picture stands free and inside, and no cell of a table is cut', async ({
  browser,
}) => {
  const page = await atWork(browser, 'ines')
  const listed: string[] = []
  for (const list of LISTS) listed.push(...(await linksOf(page, list)))
  let pictures = 0
  for (const address of new Set([...listed, ...ALONE])) {
    await page.goto(address, { waitUntil: 'load' })
    for (const size of [DESK, PHONE]) {
      await page.setViewportSize(size)
      const found = await pictureFaults(page)
      pictures += found.pictures
      expect.soft(found.faults, `${address} at ${size.width} px`).toEqual([])
    }
  }
  expect(pictures).toBeGreaterThan(PICTURES_AT_LEAST)
})
