import ICAL from 'ical.js'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { GET } from '@/app/calendar/[token]/route'
import { newSecretToken } from '@/lib/auth/secret-token'
import { database } from '@/lib/db/client'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

/* Read by a parser of RFC 5545 that calendar programs use. */

const LONG = `Can the boards be soldered on line 2; “slowly”, with the ${'very '.repeat(40)}old pot?`

let db: FreshDatabase
let world: World
const { token, tokenHash } = newSecretToken()

beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  await world.must('design', 'ask-action', {
    programme: world.code,
    item: 'programme-frame',
    from: 'design',
    to: 'production',
    kind: 'feasibility',
    question: LONG,
    dueOn: '2099-02-28',
  })
  await world.must('production', 'create-calendar-address', { tokenHash })
})
afterAll(() => db.drop())

const ask = (secret: string, from = '192.0.2.7') =>
  GET(new Request(`http://liquidus.example/calendar/${secret}`, { headers: { 'x-forwarded-for': from } }), {
    params: Promise.resolve({ token: secret }),
  })
const eventsOf = async (answer: Response) =>
  new ICAL.Component(ICAL.parse(await answer.text()))
    .getAllSubcomponents('vevent')
    .map((event) => new ICAL.Event(event))

test('the due days of the desk are whole days with what, where and a stable identity', async () => {
  const answer = await ask(token)
  expect(answer.status).toBe(200)
  expect(answer.headers.get('content-type')).toBe('text/calendar; charset=utf-8')
  expect(answer.headers.get('cache-control')).toBe('private, no-store')
  const [event, ...others] = await eventsOf(answer)
  expect(others).toEqual([])
  expect(event?.startDate.isDate).toBe(true)
  expect(event?.startDate.toString()).toBe('2099-02-28')
  expect(event?.summary).toMatch(new RegExp(`^${world.code}: Answer an action\\. Can the boards`))
  expect(event?.description).toBe(LONG)
  expect(String(event?.component.getFirstPropertyValue('url'))).toMatch(
    new RegExp(`/programmes/${world.code}/actions/1$`),
  )
  const [again] = await eventsOf(await ask(token))
  expect(again?.uid).toBe(event?.uid)
})

test('lines are folded at 75 octets and end in CRLF (RFC 5545, section 3.1)', async () => {
  const text = await (await ask(token)).text()
  expect(text).toMatch(/^BEGIN:VCALENDAR\r\n/)
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
})

test('the address is kept as a hash only, there is one at a time, and stopped it is not there', async () => {
  expect(JSON.stringify(await database().calendarAddress.findMany())).not.toContain(token)
  expect(JSON.stringify(await database().trailEntry.findMany())).not.toContain(token)
  expect(
    await world.as('production', 'create-calendar-address', { tokenHash: newSecretToken().tokenHash }),
  ).toMatchObject({ ok: false, message: 'You have an address already. Stop that one first.' })
  await world.must('production', 'revoke-calendar-address', {})
  expect((await ask(token)).status).toBe(404)
  const next = newSecretToken()
  await world.must('production', 'create-calendar-address', { tokenHash: next.tokenHash })
  expect((await ask(next.token)).status).toBe(200)
  await world.must('administrator', 'disable-person', { personId: world.person.production, reason: 'Left.' })
  expect((await ask(next.token)).status).toBe(404)
})

test('guessing is slowed, whatever is guessed', async () => {
  const answers = await Promise.all(
    Array.from({ length: 70 }, async () => (await ask(newSecretToken().token, '198.51.100.9')).status),
  )
  expect(answers.filter((status) => status === 404).length).toBeLessThanOrEqual(62)
  expect(answers).toContain(429)
  expect((await ask('short', '198.51.100.9')).status).toBe(429)
})
