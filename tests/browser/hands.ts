import { expect, type BrowserContextOptions, type Locator } from 'playwright/test'
import { DESK, PHONE } from '@/tests/browser/no-fault'

/** A way of working without a mouse. */
export interface Hand {
  readonly how: string
  readonly context: BrowserContextOptions
  /** Sends, follows or unfolds. */
  press(target: Locator): Promise<void>
  /** Picks one of several, or ticks. */
  pick(box: Locator): Promise<void>
  /** Types in place of what stands in the box. */
  write(box: Locator, text: string): Promise<void>
}

/** More stops than this to anything on a page is no way to it. */
const MOST_STOPS = 250

export const ON_A_PHONE: Hand = {
  how: 'on a phone',
  context: { viewport: PHONE, hasTouch: true, isMobile: true },
  // A tap goes to what lies uppermost there, and fails where that is something else.
  press: (target) => target.tap(),
  pick: (box) => box.tap(),
  async write(box, text) {
    await box.tap()
    await box.fill(text)
  },
}

export const BY_KEYBOARD: Hand = {
  how: 'by keyboard alone',
  context: { viewport: DESK },
  async press(target) {
    await tabTo(target)
    await target.page().keyboard.press('Enter')
  },
  async pick(box) {
    await tabTo(box)
    await box.page().keyboard.press('Space')
    await expect(box).toBeChecked()
  },
  async write(box, text) {
    await tabTo(box)
    await box.page().keyboard.press('ControlOrMeta+A')
    await box.page().keyboard.type(text)
  },
}

/** Goes on from where the focus is until the element has it, which then is in sight. */
async function tabTo(target: Locator): Promise<void> {
  await expect(target).toBeVisible()
  for (let stops = 0; !(await hasFocus(target)); stops++) {
    expect(stops, `Tab reaches ${target}`).toBeLessThan(MOST_STOPS)
    await target.page().keyboard.press('Tab')
  }
  await expect(target).toBeInViewport()
  await expect.poll(() => target.evaluate(liesUppermost), `${target} is not hidden`).toBe(true)
}

const hasFocus = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => element === document.activeElement)

/** Runs in the browser: some part of it can be seen, as WCAG 2.2, success criterion 2.4.11, asks. */
function liesUppermost(element: Element): boolean {
  const { left, top, width, height } = element.getBoundingClientRect()
  return [0.1, 0.5, 0.9].some((share) => {
    const uppermost = document.elementFromPoint(left + width * share, top + height * share)
    return uppermost !== null && (element.contains(uppermost) || uppermost.contains(element))
  })
}
