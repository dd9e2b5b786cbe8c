import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'

vi.mock('next/headers', async () => (await import('@/tests/commands/session-cookie')).REQUEST_HEADERS)

import { database } from '@/lib/db/client'
import type { FormAction } from '@/app/forms/form-state'
import { signInHere, signOutHere } from '@/tests/commands/session-cookie'
import { openWorld, type World } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/* OWASP ASVS 5.0.0 V8.3.1 and V6.4.1, as for the routes: what a page shows and a form sends is decided alike. */

/** What is for those who are not signed in, or whose password is for one use; and what it does for them. */
const OPEN: Readonly<Record<string, string>> = {
  'sign-in/page.tsx': 'signs in',
  'password/page.tsx': 'chooses a password of their own; leads to the sign-in without a session',
  'sign-in/actions.ts signIn': 'signs in',
  'sign-in/actions.ts signOut': 'signs out',
  'password/actions.ts endOwnSession': 'ends a session of their own; leads to the sign-in without a session',
  'password/actions.ts changePassword':
    'chooses a password of their own; leads to the sign-in without a session',
}

const FILES = readdirSync('app', { recursive: true, encoding: 'utf8' })
const PAGES = FILES.filter((file) => /(^|\/)page\.tsx$/.test(file) && !OPEN[file])
const ACTION_FILES = FILES.filter(
  (file) => /\.tsx?$/.test(file) && /^['"]use server['"]/m.test(readFileSync(join('app', file), 'utf8')),
)

let db: FreshInstallation
let world: World
beforeAll(async () => {
  db = await freshInstallation()
  world = await openWorld()
  await database().person.update({
    where: { id: world.person.secondQuality },
    data: { mustChangePassword: true, oneTimePasswordUntil: new Date(Date.now() + 3_600_000) },
  })
})
afterAll(async () => {
  await db.drop()
})

const load = (file: string): Promise<Record<string, unknown>> =>
  import(/* @vite-ignore */ join(process.cwd(), 'app', file))

type Page = (given: { params: Promise<object>; searchParams: Promise<object> }) => Promise<unknown>

/** Where a page leads instead of being drawn; undefined when it is drawn. */
async function ledTo(page: Page): Promise<string | undefined> {
  const params = Promise.resolve(
    new Proxy(
      { code: world.code },
      { get: (known, name) => (name === 'then' ? undefined : (Reflect.get(known, name) ?? 'x')) },
    ),
  )
  try {
    await page({ params, searchParams: Promise.resolve({}) })
    return undefined
  } catch (error) {
    const [what, , to] = String((error as { digest?: string }).digest).split(';')
    expect(what, String(error)).toBe('NEXT_REDIRECT')
    return to
  }
}

test('there are pages and actions to look at', () => {
  expect(PAGES.length).toBeGreaterThan(40)
  expect(ACTION_FILES.length).toBeGreaterThan(10)
})

describe.each(PAGES)('%s', (file) => {
  test('leads to the sign-in, or to the new password, before it is drawn', async () => {
    const page = (await load(file))['default'] as Page
    signOutHere()
    expect(await ledTo(page)).toMatch(/^\/sign-in/)
    await signInHere(world.person.secondQuality)
    expect(await ledTo(page)).toBe('/password')
  })
})

describe.each(ACTION_FILES)('%s', (file) => {
  test('does nothing without a session, or on a one-time password, and says so', async () => {
    for (const [name, action] of Object.entries(await load(file))) {
      if (OPEN[`${file} ${name}`]) continue
      const send = () => (action as FormAction)({ fields: {}, typed: {} }, new FormData())
      signOutHere()
      expect((await send()).message, name).toContain('Your session has ended')
      await signInHere(world.person.secondQuality)
      expect((await send()).message, name).toContain('one-time password')
    }
  })
})
