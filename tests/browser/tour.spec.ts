import { expect, test } from 'playwright/test'
import type { DemoPerson } from '@/seed/people'
import { atWork } from '@/tests/browser/at-work'

const ROLES: Readonly<Partial<Record<DemoPerson, string>>> = {
  ines: 'Design engineering',
  petra: 'Production',
  quill: 'Quality',
  audun: 'Auditor',
  adela: 'Administrator',
}

test.describe('the tour of the demo', () => {
  for (const [who, role] of Object.entries(ROLES))
    test(`${role}: five steps, each on a page that ${who} may read`, async ({ browser }) => {
      const page = await atWork(browser, who as DemoPerson)
      await page.goto('/tour')
      await expect(page.getByRole('main')).toContainText(role)
      const steps = page.locator('.tour').getByRole('link')
      await expect(steps).toHaveCount(5)
      for (const address of await steps.evaluateAll((links) =>
        links.map((link) => link.getAttribute('href')),
      )) {
        const answer = await page.goto(address ?? '')
        expect(answer?.status(), address ?? '').toBe(200)
      }
    })
})
