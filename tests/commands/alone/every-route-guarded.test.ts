import { randomUUID } from 'node:crypto'
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { attachBoardFiles } from '@/tests/commands/attach-board-files'
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'

vi.mock('next/headers', async () => (await import('@/tests/commands/session-cookie')).REQUEST_HEADERS)

import { guardOf } from '@/app/guard/guard-of'
import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { installedStore } from '@/lib/evidence/installed-store'
import { registerFile } from '@/lib/evidence/register-file'
import { signInHere, signOutHere } from '@/tests/commands/session-cookie'
import { VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, type Role, type World } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/*
 * OWASP ASVS 5.0.0 V8.2.1 (function-level access is decided for everybody) and V8.3.1 (on the server); V6.4.1:
 * a password set for somebody is for the first use, until they choose their own.
 */

const METHODS = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'] as const

/** Who may, and who may not though signed in with a password of their own. A new route needs its row here. */
const ROUTES: Readonly<Record<string, { may: Role; mayNot: Role | 'nobody' }>> = {
  // Everybody who is signed in may look for something; the query leaves out what they may not read.
  'GET find/matches': { may: 'stranger', mayNot: 'nobody' },
  'GET administration/bundle': { may: 'auditor', mayNot: 'lead' },
  'GET administration/csv': { may: 'administrator', mayNot: 'quality' },
  'GET administration/verification': { may: 'administrator', mayNot: 'design' },
  'GET audit/csv': { may: 'quality', mayNot: 'administrator' },
  'GET audit/verification': { may: 'auditor', mayNot: 'administrator' },
  'GET programmes/[code]/board/[evidence]/picture': { may: 'production', mayNot: 'stranger' },
  'POST programmes/[code]/actions/[action]/files': { may: 'production', mayNot: 'auditor' },
  'POST programmes/[code]/pictures': { may: 'production', mayNot: 'auditor' },
  'GET programmes/[code]/files/[evidence]': { may: 'production', mayNot: 'stranger' },
  'POST programmes/[code]/items/[item]/evidence': { may: 'design', mayNot: 'auditor' },
  'POST works/machines/[machine]/logs/[log]/file': { may: 'production', mayNot: 'design' },
  'POST works/machines/[machine]/logs/[log]/import/run': { may: 'quality', mayNot: 'stranger' },
  'GET works/machines/[machine]/logs/[log]/would-find': { may: 'stranger', mayNot: 'administrator' },
  'GET works/trails/[kind]/[code]/bundle': { may: 'auditor', mayNot: 'administrator' },
  'GET works/trails/[kind]/[code]/csv': { may: 'design', mayNot: 'administrator' },
  'GET works/trails/[kind]/[code]/verification': { may: 'production', mayNot: 'administrator' },
  'POST works/suppliers/[supplier]/lots/[lot]/file': { may: 'quality', mayNot: 'production' },
  'POST works/suppliers/[supplier]/lots/[lot]/import/run': { may: 'quality', mayNot: 'administrator' },
  'POST programmes/[code]/lots/[lot]/file': { may: 'quality', mayNot: 'production' },
  'POST programmes/[code]/lots/[lot]/import/run': { may: 'quality', mayNot: 'administrator' },
  'POST works/parts/[part]/drawings': { may: 'quality', mayNot: 'production' },
  // Everybody who is signed in reads the parts of the works.
  'GET works/parts/[part]/drawings/[evidence]': { may: 'administrator', mayNot: 'nobody' },
  // Everybody who is signed in reads the register, and may have a table read that is their own.
  'GET instruments/table': { may: 'design', mayNot: 'nobody' },
  // What the works keep is everybody's to read.
  'GET works/tables/training': { may: 'stranger', mayNot: 'nobody' },
  'GET works/people/[person]/[record]/certificates/[evidence]': { may: 'stranger', mayNot: 'nobody' },
  'POST works/people/[person]/[record]/certificates': { may: 'production', mayNot: 'design' },
  'POST tables/rows': { may: 'production', mayNot: 'nobody' },
  // Their own desk: whoever is signed in has one.
  'GET live': { may: 'stranger', mayNot: 'nobody' },
  'GET works/live': { may: 'stranger', mayNot: 'administrator' },
  'GET programmes/[code]/live': { may: 'auditor', mayNot: 'stranger' },
  'GET programmes/[code]/tables/[table]': { may: 'production', mayNot: 'stranger' },
  'GET programmes/[code]/trail/bundle': { may: 'auditor', mayNot: 'stranger' },
  'GET programmes/[code]/trail/csv': { may: 'design', mayNot: 'administrator' },
  'GET programmes/[code]/trail/verification': { may: 'production', mayNot: 'stranger' },
}

/** What asks for no session, and why that is right. */
const OPEN: Readonly<Record<string, 'nothing' | 'token'>> = {
  // For load balancers.
  'GET health': 'nothing',
  // Describes the calls of machines, the same for everybody.
  'GET api/openapi': 'nothing',
  // Where people come in.
  'GET api/auth/[...nextauth]': 'nothing',
  'POST api/auth/[...nextauth]': 'nothing',
  'POST sign-in/provider': 'nothing',
  // For machines, by their own token; see machine-readings.test.ts.
  'POST api/readings': 'token',
  // For calendar programs, by the secret in the address; see calendar.test.ts.
  'GET calendar/[token]': 'token',
}

const EMPTY_FORM = '--x--\r\n'

type Handler = (request: Request, place: { params: Promise<object> }) => Promise<Response>

const found = new Map<string, Handler>()
let db: FreshInstallation
let world: World
let evidence: string
let boardFiles: string
let certificate: string
let drawing: string

beforeAll(async () => {
  for (const file of readdirSync('app', { recursive: true, encoding: 'utf8' })) {
    if (!/(^|\/)route\.[jt]sx?$/.test(file)) continue
    const place = file.replace(/\/?route\.\w+$/, '')
    const path = join(process.cwd(), 'app', file)
    const exported = (await import(/* @vite-ignore */ path)) as Record<string, Handler>
    for (const method of METHODS) if (exported[method]) found.set(`${method} ${place}`, exported[method])
  }
  db = await freshInstallation()
  world = await openWorld()
  evidence = await attachedFile()
  boardFiles = await attachBoardFiles(world)
  const attached = await world.must(
    'production',
    'attach-certificate',
    await VALID_INPUT['attach-certificate'](world, 'production'),
  )
  certificate = attached.result.evidence
  drawing = await attachedDrawing('PART 5%')
  await world.must('production', 'open-line', { code: 'Line 1', name: 'A line' })
  await world.must('production', 'open-machine', { line: 'Line 1', code: 'Wave 1', kind: 'wave' })
  await world.must('production', 'state-line', { programme: world.code, line: 'Line 1' })
  await world.must('quality', 'open-log', {
    machine: 'Wave 1',
    code: 'FLUX 5%',
    characteristic: 'flux-density',
    instrument: null,
  })
  await world.must('quality', 'add-supplier', { supplier: 'A supplier' })
  await world.must('quality', 'receive-lot', {
    supplier: 'A supplier',
    code: 'LOT 5%',
    kind: 'laminate',
    part: 'Laminate',
    dateCode: '2601',
    receivedOn: '2026-01-05',
    quantity: 10,
    packing: 'sealed',
    temperatureC: 20,
    relativeHumidityPct: 40,
    supplierResult: '',
  })
  await lotOfAnEarlierVersion()
})
afterAll(async () => {
  await db.drop()
})
beforeEach(signOutHere)

/** A lot that the programme recorded before the works kept lots; it is tested there. */
async function lotOfAnEarlierVersion(): Promise<void> {
  const lot = await database().lot.findFirstOrThrow({ where: { code: 'LOT 5%' } })
  const { id: trailId } = await database().programme.findUniqueOrThrow({ where: { code: world.code } })
  const own = { id: randomUUID(), code: 'OLD 5%', trailId, disposition: Prisma.DbNull }
  await database().lot.create({ data: { ...lot, ...own, storage: lot.storage as object } })
}

async function attachedFile(): Promise<string> {
  const content = await (await installedStore()).put(Readable.from([Buffer.from('A certificate.')]))
  const { id } = await database().programme.findUniqueOrThrow({ where: { code: world.code } })
  await registerFile(content, { personId: world.person.design, trailId: id })
  const { result } = await world.must('design', 'attach-evidence', {
    programme: world.code,
    item: 'laminate',
    kind: 'certificate',
    note: '',
    what: { sha256: content.sha256, fileName: 'certificate.txt' },
  })
  return String(result['evidence'])
}

async function attachedDrawing(part: string): Promise<string> {
  await world.must('design', 'describe-part', {
    code: part,
    values: { description: 'A part', kind: 'other' },
    reason: 'Because the test needs it.',
  })
  const content = await (await installedStore()).put(Readable.from([Buffer.from('A drawing.')]))
  const { id } = await database().part.findUniqueOrThrow({ where: { code: part } })
  await registerFile(content, { personId: world.person.design, trailId: id })
  const { result } = await world.must('design', 'attach-drawing', {
    part,
    note: '',
    sha256: content.sha256,
    fileName: 'drawing.txt',
  })
  return String(result.evidence)
}

function evidenceOf(name: string): string {
  if (name.includes('/board/')) return boardFiles
  if (name.includes('/drawings/')) return drawing
  return name.includes('works/') ? certificate : evidence
}

/** Asks the real handler, as a script does, or as a browser that follows a link or sends a plain form. */
async function ask(name: string, accept = '*/*'): Promise<{ answer: Response; bodyWasRead: boolean }> {
  const [method = '', place = ''] = name.split(' ')
  let bodyWasRead = false
  const body = new ReadableStream(
    {
      pull(controller) {
        bodyWasRead = true
        controller.enqueue(new TextEncoder().encode(EMPTY_FORM))
        controller.close()
      },
    },
    { highWaterMark: 0 },
  )
  const request = new Request(`http://liquidus.example/${place.replaceAll(/[[\]]/g, '')}`, {
    method,
    headers: {
      accept,
      'sec-fetch-site': 'same-origin',
      ...(method === 'GET'
        ? {}
        : { 'content-type': 'multipart/form-data; boundary=x', 'content-length': '7' }),
    },
    ...(method === 'GET' ? {} : ({ body, duplex: 'half' } as object)),
  })
  const params = {
    code: name.includes('works/trails/') ? 'Wave 1' : world.code,
    kind: 'machine',
    machine: 'Wave 1',
    item: 'laminate',
    log: 'FLUX 5%',
    supplier: 'A supplier',
    lot: name.includes('/suppliers/') ? 'LOT 5%' : 'OLD 5%',
    action: '1',
    table: 'lots',
    person: 'Goran Eide',
    record: '00000000-0000-7000-8000-000000000000',
    part: 'PART 5%',
    evidence: evidenceOf(name),
  }
  const answer = await found.get(name)!(request, { params: Promise.resolve(params) })
  return { answer, bodyWasRead }
}

test('every route of the app is in one of the two tables, and behind the guard that the table says', () => {
  expect([...found.keys()].sort()).toEqual([...Object.keys(ROUTES), ...Object.keys(OPEN)].sort())
  for (const [name, handler] of found)
    expect({ name, by: guardOf(handler)?.by }).toEqual({ name, by: OPEN[name] ?? 'session' })
})

test('what stands open says why', () => {
  for (const handler of found.values()) {
    const guard = guardOf(handler)
    if (guard?.by === 'nothing') expect(guard.because).toMatch(/^[A-Z].{15,}\.$/)
  }
})

describe.each(Object.entries(ROUTES))('%s', (name, { may, mayNot }) => {
  test('without a session answers 401, or leads a browser to the sign-in, and reads nothing', async () => {
    const { answer, bodyWasRead } = await ask(name)
    expect(answer.status).toBe(401)
    expect(bodyWasRead).toBe(false)
    const led = (await ask(name, 'text/html')).answer
    expect(led.status).toBe(303)
    expect(led.headers.get('location')).toMatch(/^\/sign-in/)
  })

  test('with a one-time password answers 403, or leads a browser to the new password, and reads nothing', async () => {
    const id = world.person[may]
    await database().person.update({ where: { id }, data: ONE_TIME })
    try {
      await signInHere(id)
      const { answer, bodyWasRead } = await ask(name)
      expect(answer.status).toBe(403)
      expect(await answer.text()).toContain('one-time password')
      expect(bodyWasRead).toBe(false)
      const led = (await ask(name, 'text/html')).answer
      expect(led.status).toBe(303)
      expect(led.headers.get('location')).toBe('/password')
    } finally {
      await database().person.update({ where: { id }, data: { mustChangePassword: false } })
    }
  })

  test(`is refused to ${mayNot}, and nothing is read`, async () => {
    if (mayNot === 'nobody') return
    await signInHere(world.person[mayNot])
    const { answer, bodyWasRead } = await ask(name)
    expect(answer.status).toBe(403)
    expect(bodyWasRead).toBe(false)
  })

  test(`is open to ${may}`, async () => {
    await signInHere(world.person[may])
    const { answer } = await ask(name, 'application/json')
    // An empty form is refused for what it lacks.
    expect(answer.status).toBe(name.startsWith('GET') ? 200 : name.endsWith('/run') ? 200 : 400)
    await answer.body?.cancel()
  })

  test('is refused to a form of another site, whoever sends it', async () => {
    if (name.startsWith('GET')) return
    await signInHere(world.person[may])
    const [, place = ''] = name.split(' ')
    const request = new Request(`http://liquidus.example/${place}`, {
      method: 'POST',
      headers: { 'sec-fetch-site': 'cross-site' },
    })
    const answer = await found.get(name)!(request, { params: Promise.resolve({ code: world.code }) })
    expect(answer.status).toBe(403)
  })
})

const ONE_TIME = { mustChangePassword: true, oneTimePasswordUntil: new Date(Date.now() + 3_600_000) }

test('a file of one programme is not found under the address of another', async () => {
  const elsewhere = await openWorld()
  await signInHere(elsewhere.person.lead)
  const answer = await found.get('GET programmes/[code]/files/[evidence]')!(
    new Request('http://liquidus.example/'),
    { params: Promise.resolve({ code: elsewhere.code, evidence }) },
  )
  expect(answer.status).toBe(404)
})
