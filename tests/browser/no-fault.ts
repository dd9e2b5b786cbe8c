import AxeBuilder from '@axe-core/playwright'
import { expect, type Page } from 'playwright/test'
import { smallTargets } from '@/tests/browser/small-targets'

export const DESK = { width: 1440, height: 900 }
export const PHONE = { width: 390, height: 844 }

/** WCAG 2.2 up to AA, and what axe calls good practice besides. */
const ASKED = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

interface Asked {
  readonly sizes?: readonly (typeof DESK)[]
  /** Off where the page has the colours of the desk: comparing them is most of the time. */
  readonly contrastOnPhone?: boolean
}

/** Axe finds nothing on the page at these sizes, and on a phone the page fits and can be tapped. It is left at its size. */
export async function expectNoFault(
  page: Page,
  { sizes = [DESK, PHONE], contrastOnPhone = true }: Asked = {},
): Promise<void> {
  const before = page.viewportSize()
  for (const size of sizes) {
    await page.setViewportSize(size)
    const faults = await faultsOf(page, size === DESK || contrastOnPhone)
    expect.soft(faults, `at ${size.width} px`).toEqual([])
  }
  await expectToSuitPhone(page)
  if (before) await page.setViewportSize(before)
}

async function expectToSuitPhone(page: Page): Promise<void> {
  await page.setViewportSize(PHONE)
  const { wide, sees } = await page.evaluate(() => ({
    wide: document.documentElement.scrollWidth,
    sees: window.innerWidth,
  }))
  expect.soft(wide, `${page.url()} is no wider than the phone`).toBeLessThanOrEqual(sees)
  expect.soft(await smallTargets(page), `${page.url()} can be tapped`).toEqual([])
}

async function faultsOf(page: Page, contrast: boolean) {
  const { violations } = await new AxeBuilder({ page })
    // No page holds another origin's frame, and what passes is not wanted: on a long sheet that is two thirds of the time.
    .setLegacyMode(true)
    .options({
      runOnly: { type: 'tag', values: ASKED },
      rules: { 'color-contrast': { enabled: contrast } },
      resultTypes: ['violations'],
    })
    .analyze()
  return violations.map(({ id, impact, nodes }) => ({
    id,
    impact,
    at: nodes.slice(0, 3).map(({ html }) => html.slice(0, 160)),
  }))
}
