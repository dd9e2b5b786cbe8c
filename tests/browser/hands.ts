import { type Browser, type BrowserContextOptions, type Locator, type Page } from 'playwright/test'
import type { DemoPerson } from '@/seed/people'
import { signIn } from '@/tests/browser/at-work'
import { PHONE } from '@/tests/browser/no-fault'

/** A way of working without a mouse. */
export interface Hand {
  readonly context: BrowserContextOptions
  /** Sends, follows or unfolds. */
  press(target: Locator): Promise<void>
  /** Picks one of several, or ticks. */
  pick(box: Locator): Promise<void>
  /** Types in place of what stands in the box. */
  write(box: Locator, text: string): Promise<void>
}

export const ON_A_PHONE: Hand = {
  context: { viewport: PHONE, hasTouch: true, isMobile: true },
  // A tap goes to what lies uppermost there, and fails where that is something else.
  press: (target) => target.tap(),
  pick: (box) => box.tap(),
  async write(box, text) {
    await box.tap()
    await box.fill(text)
  },
}

/** A person signed in at a browser of their own, worked as that hand works. */
export async function atWorkWith(browser: Browser, who: DemoPerson, hand: Hand): Promise<Page> {
  const page = await (await browser.newContext(hand.context)).newPage()
  await signIn(page, who)
  return page
}
