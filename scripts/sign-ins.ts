import { say } from '@/scripts/progress'

/** Loads the demo programme, its people and their work. */
export async function loadDemo(): Promise<void> {
  const { default: seedDemo } = await import('@/seed/demo')
  await seedDemo()
}

/** The people of the demo, what each does, and the one password. */
export async function sayDemoSignIns(): Promise<void> {
  const { DEMO_PASSWORD, DEMO_PEOPLE } = await import('@/seed/people')
  const people = Object.values(DEMO_PEOPLE)
  const widest = Math.max(...people.map(({ email }) => email.length))
  say(`Demo sign-ins, all with the password ${DEMO_PASSWORD}`)
  for (const { email, name, does } of people) say(`  ${email.padEnd(widest)}  ${name}, ${does}`)
}

/**
 * In an installation that has nobody yet: an administrator, whose password is shown this once. Where nobody used it
 * in time, a new one.
 */
export async function sayNewAdministrator(): Promise<void> {
  const { createFirstAdministrator } = await import('@/lib/auth/first-administrator')
  const created = await createFirstAdministrator()
  if (!created) return
  say('The first administrator. The password is shown this once and must be changed at the first sign-in:')
  say(`  ${created.email}  ${created.password}`)
  const until = `${created.until.toISOString().slice(0, 16).replace('T', ' ')} UTC`
  say(`It is good until ${until}. Where nobody has used it by then, the next start makes a new one.`)
}
