import { expect, test } from 'playwright/test'
import { signIn } from '@/tests/browser/at-work'

test('a wrong password is refused, and the address typed stays', async ({ page }) => {
  await page.goto('/sign-in')
  await page.getByRole('textbox', { name: 'E-mail address' }).fill('ines@demo.invalid')
  await page.getByRole('textbox', { name: 'Password' }).fill('not the password')
  await page.getByRole('button', { name: 'Sign in', exact: true }).click()
  await expect(page.getByText('The address or the password is not right.')).toBeVisible()
  await expect(page.getByRole('textbox', { name: 'E-mail address' })).toHaveValue('ines@demo.invalid')
})

test('Tomas opens a programme, and a code that exists keeps what he typed', async ({ page }) => {
  await signIn(page, 'tomas')
  await page.goto('/programmes/new')
  const fill = async (code: string) => {
    await page.getByLabel('Code', { exact: true }).fill(code)
    await page.getByLabel('Title', { exact: true }).fill('Pump monitor')
    await page.getByRole('radio', { name: 'Design engineering' }).check()
    await page.getByLabel('Product class').selectOption('2')
    await page.getByLabel('Alloy family').selectOption('lead-free')
    await page.getByLabel('Service life').fill('10')
    await page.getByLabel('Environment in service').selectOption('GB')
    await page.getByLabel('Boards per year').fill('200')
    await page.getByRole('button', { name: 'Open the programme' }).click()
  }
  await fill('LX-41')
  await expect(page.getByRole('alert').filter({ hasText: 'is taken' }).first()).toBeVisible()
  await expect(page.getByLabel('Title', { exact: true })).toHaveValue('Pump monitor')
  await fill('PM-7')
  await expect(page.getByRole('heading', { level: 1, name: 'Pump monitor' })).toBeVisible()
})

test('the gates of a programme that is blocked say what is outstanding', async ({ page }) => {
  await signIn(page, 'quill')
  await page.goto('/programmes/PX-12/gates/evaluation')
  await expect(page.getByRole('heading', { name: 'Outstanding before this gate' })).toBeVisible()
})

test('Audun, the auditor, reads the trail and verifies it', async ({ page }) => {
  await signIn(page, 'audun')
  await page.goto('/programmes/LX-41/trail')
  await page.getByRole('button', { name: 'Verify the trail' }).click()
  await expect(page.getByText(/entries are as they were written/)).toBeVisible()
})
