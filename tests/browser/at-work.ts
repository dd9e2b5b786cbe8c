import {
  expect,
  type Browser,
  type BrowserContextOptions,
  type Locator,
  type Page,
  type Response,
} from 'playwright/test'
import { whatHides } from '@/tests/browser/what-hides'
import { DEMO_PASSWORD, DEMO_PEOPLE, type DemoPerson } from '@/seed/people'

export async function signIn(page: Page, who: DemoPerson): Promise<void> {
  await page.goto('/sign-in')
  await page.getByRole('textbox', { name: 'E-mail address' }).fill(DEMO_PEOPLE[who].email)
  await page.getByRole('textbox', { name: 'Password' }).fill(DEMO_PASSWORD)
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await page.waitForURL((address) => !address.pathname.startsWith('/sign-in'))
}

/** A person at a browser of their own, such as a phone's, signed in. */
export async function atWork(
  browser: Browser,
  who: DemoPerson,
  context: BrowserContextOptions = {},
): Promise<Page> {
  const page = await (await browser.newContext(context)).newPage()
  await signIn(page, who)
  return page
}

/** Once a page listens for news its scripts run; a key pressed before is lost. */
export const listensForNews = (page: Page): Promise<unknown> => page.waitForRequest(/\/live\?/)

/** Types into one box, or chooses in one list or among the buttons of one name; a box out of sight says what hides it. */
export const enter = (box: Locator, value: unknown): Promise<void> =>
  enterIn(box, value).catch(async (error: Error) => {
    throw new Error(`${error.message}\n${await whatHides(box).catch(() => 'It is not there.')}`)
  })

async function enterIn(box: Locator, value: unknown): Promise<void> {
  const text = value === true ? 'yes' : value === false ? 'no' : String(value)
  const kind = await box.first().evaluate((element) => element.getAttribute('type') ?? element.tagName)
  if (kind === 'SELECT') await box.selectOption(text)
  else if (kind === 'radio') await box.and(box.page().locator(`[value="${text}"]`)).check()
  else await box.fill(text)
}

/** Types a record into the boxes named `prefix.key`. */
export async function enterAll(
  form: Locator,
  prefix: string,
  values: Readonly<Record<string, unknown>>,
): Promise<void> {
  for (const [key, value] of Object.entries(values))
    await enter(form.locator(`[name="${prefix}${key}"]`), value)
}

/** Sends a form and expects it to be taken: a refusal fails with its own sentence. */
export async function send(page: Page, button: Locator): Promise<void> {
  const answered = page.waitForResponse(isFormAnswer, { timeout: 60_000 })
  await button.click()
  const response = await answered
  if (response.status() === 303 || response.headers()['x-action-redirect'] !== undefined) return
  const refused = page.locator('.notice[role="alert"]').first()
  expect(await refused.innerText(), 'the form was refused').toBe('')
}

/** A form answered by its server action, with scripts (the action is named in a header) or without. */
const isFormAnswer = (response: Response): boolean =>
  response.request().method() === 'POST' &&
  (response.request().headers()['next-action'] !== undefined || response.status() === 303)

/** The form of that name on the page, folded away or not. */
export const formOf = (page: Page, name: string): Locator => page.locator(`form[aria-label="${name}"]`)

/** A CSV text chosen in the file box of a form. */
export const csvFile = (name: string, text: string) => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(text),
})

/** Unfolds the part of the page a form is folded into, if it is. */
export async function unfold(form: Locator): Promise<void> {
  const folded = form.locator('xpath=ancestor::details[not(@open)]/summary')
  if ((await folded.count()) > 0) await folded.first().click()
}
