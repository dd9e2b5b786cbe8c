import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import {
  endSessionOf,
  openSession,
  personOfSession,
  sessionsOf,
  sweepSessions,
} from '@/lib/auth/session-store'
import { database } from '@/lib/db/client'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

const NOW = new Date('2026-03-02T08:00:00Z')
const MINUTE_MS = 60_000
const after = (minutes: number) => new Date(NOW.getTime() + minutes * MINUTE_MS)
const BROWSER = { address: '192.0.2.1', origin: '192.0.2.1', userAgent: 'A browser\0 of some kind' }

const open = (personId: string, at = NOW) =>
  openSession({ personId, credentialEpoch: 0, signedInAt: Math.floor(at.getTime() / 1000) }, BROWSER, at)

test('a session that was ended is worth nothing, whoever kept a copy of its cookie; the others go on', async () => {
  const [here, there] = [await open(world.person.design), await open(world.person.design)]
  expect(await personOfSession(here, NOW)).toMatchObject({ id: world.person.design, name: 'Test design' })
  await endSessionOf(world.person.design, here.sessionId)
  expect(await personOfSession(here, NOW)).toBeUndefined()
  expect(await personOfSession(there, NOW)).toBeDefined()
})

test('nobody ends the session of another', async () => {
  const session = await open(world.person.quality)
  await endSessionOf(world.person.design, session.sessionId)
  expect(await personOfSession(session, NOW)).toBeDefined()
})

test('a cookie that names a session nobody opened, or another’s, is worth nothing', async () => {
  const session = await open(world.person.quality)
  expect(await personOfSession({ ...session, sessionId: randomUUID() }, NOW)).toBeUndefined()
  expect(await personOfSession({ ...session, personId: world.person.lead }, NOW)).toBeUndefined()
})

describe('a session in which nothing is asked', () => {
  // NIST SP 800-63B-4, section 2.2.3 (AAL2): at most one hour without use (from memory).
  test('ends after an hour; one that is used goes on', async () => {
    const [idle, used] = [await open(world.person.lead), await open(world.person.lead)]
    expect(await personOfSession(used, after(40))).toBeDefined()
    expect(await personOfSession(idle, after(60))).toBeUndefined()
    expect(await personOfSession(used, after(99))).toBeDefined()
    expect(await personOfSession(used, after(159))).toBeUndefined()
  })

  test('being seen is written down once a minute at most', async () => {
    const session = await open(world.person.lead)
    const seenAt = async () =>
      (await database().session.findUniqueOrThrow({ where: { id: session.sessionId } })).lastSeenAt
    await personOfSession(session, after(0.9))
    expect(await seenAt()).toEqual(NOW)
    await personOfSession(session, after(1))
    expect(await seenAt()).toEqual(after(1))
  })
})

test('other sessions end with the password, the rights or the access of their person', async () => {
  const { person, must } = world
  const session = await open(person.stranger)
  await must('administrator', 'disable-person', { personId: person.stranger, reason: 'Left.' })
  await must('administrator', 'enable-person', { personId: person.stranger, reason: 'Came back.' })
  expect(await personOfSession(session, NOW)).toBeUndefined()
  expect(await sessionsOf(person.stranger, NOW)).toEqual([])
})

test('a person sees their own sessions that last, and no others', async () => {
  const { production, auditor } = world.person
  await open(auditor)
  await open(production, after(-61))
  const [older, newer] = [await open(production, after(-20)), await open(production)]
  expect(await sessionsOf(production, NOW)).toEqual([
    {
      id: newer.sessionId,
      startedAt: NOW,
      lastSeenAt: NOW,
      browser: 'A browser of some kind',
      address: '192.0.2.1',
    },
    expect.objectContaining({ id: older.sessionId, lastSeenAt: after(-20) }),
  ])
})

test('rows of sessions that are over are cleared, and no others', async () => {
  const person = world.person.secondQuality
  await open(person, after(-61))
  const lasting = await open(person, after(-59))
  await sweepSessions(NOW)
  const left = await database().session.findMany({ where: { personId: person }, select: { id: true } })
  expect(left).toEqual([{ id: lasting.sessionId }])
})
