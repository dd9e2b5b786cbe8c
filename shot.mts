import { chromium } from 'playwright'
import { DEMO_PASSWORD, DEMO_PEOPLE } from '@/seed/people'
const [who, width, ...paths] = process.argv.slice(2)
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] })
const page = await (await browser.newContext({ viewport: { width: Number(width), height: 900 } })).newPage()
await page.goto('http://127.0.0.1:3187/sign-in')
await page.getByRole('textbox', { name: 'E-mail address' }).fill(DEMO_PEOPLE[who as 'petra'].email)
await page.getByRole('textbox', { name: 'Password' }).fill(DEMO_PASSWORD)
await page.getByRole('button', { name: 'Sign in', exact: true }).click()
await page.waitForURL((a) => !a.pathname.startsWith('/sign-in'))
for (const [i, path] of paths.entries()) {
  await page.goto(`http://127.0.0.1:3187${path}`)
  await page.screenshot({ path: `/tmp/shot-${width}-${i}.png`, fullPage: true })
  console.log(path, await page.title(), await page.evaluate(() => `${document.documentElement.scrollWidth}x${document.documentElement.scrollHeight}`))
}
await browser.close()
