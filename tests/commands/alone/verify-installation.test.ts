import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import { createFirstAdministrator } from '@/lib/auth/first-administrator'
import { personOfIdentity } from '@/lib/auth/identity'
import { performUnparsed } from '@/lib/commands/perform'
import { withConnection } from '@/lib/db/connect'
import { INSTALLATION_TRAIL } from '@/lib/trail/append-entry'
import { msUntilNight, verifyInstalled, verifyNightly } from '@/lib/trail/verify-nightly'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import type { CommandName } from '@/shared/commands/all-faces'
import { coveredTable, COVERED_TABLES, type TableName } from '@/shared/stored/covered-tables'
import { breaksInWords } from '@/shared/stored/stored-verdict'
import { Attacker } from '@/tests/commands/attacker'
import { programmeInput } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

const reason = 'Because the test needs it.'
const CALIBRATION = { calibratedOn: '2026-01-02', dueOn: '2027-01-02', certificate: 'C-1' }
const HASH = 'a hash of a password that nobody has'
const HOUR_MS = 3_600_000
const never = new AbortController().signal

let db: FreshDatabase
let attacker: Attacker
let administrator: string
let member: string
let code: string

/** Every command about people and instruments, by an administrator made as the first start makes one. */
beforeAll(async () => {
  db = await freshDatabase()
  const started = Date.now() - 300 * HOUR_MS
  administrator = (await createFirstAdministrator(undefined, new Date(started)))?.id ?? ''
  expect(
    await createFirstAdministrator(undefined, new Date(started + 100 * HOUR_MS)),
    'renewed',
  ).toBeDefined()
  const must = async (command: CommandName, input: object, by = administrator) => {
    const outcome = await performUnparsed(by, command, input, { key: randomUUID() })
    if (!outcome.ok) throw new Error(`${command}: ${outcome.message}`)
    return outcome.result
  }
  const add = async (name: string) =>
    String(
      (
        await must('add-person', {
          email: `${name}@test.invalid`,
          name,
          rights: 'member',
          passwordHash: HASH,
        })
      )['person'],
    )
  member = await add('one')
  const other = await add('two')
  await must('change-person', {
    personId: other,
    email: 'three@test.invalid',
    name: 'Three',
    rights: 'auditor',
  })
  await must('disable-person', { personId: other, reason })
  await must('enable-person', { personId: other, reason })
  await must('reset-password', { personId: other, passwordHash: HASH })
  await must('change-own-password', { passwordHash: HASH }, member)
  const address = { email: 'four@test.invalid', name: 'Four', rights: 'member', passwordHash: null }
  await must('add-person', address)
  expect(await personOfIdentity('a subject', { ...address, email_verified: true }), 'bound').toBeDefined()
  const instrument = String(
    (await must('add-instrument', { tag: 'I-1', measures: 'a length', ...CALIBRATION }))['instrument'],
  )
  await must('take-instrument-out-of-use', { instrument, reason })
  await must('calibrate-instrument', { instrument, ...CALIBRATION, calibratedOn: '2026-02-02' })
  await must('add-instrument', { tag: 'I-2', measures: 'a mass', ...CALIBRATION })
  code = `N-${randomUUID().slice(0, 8).toUpperCase()}`
  await must('open-programme', programmeInput(code), member)
  await desksOf(must, await add('five'))
  attacker = await Attacker.enter()
})
/** Every command about a person's own desk. */
async function desksOf(
  must: (command: CommandName, input: object, by?: string) => Promise<Readonly<Record<string, unknown>>>,
  colleague: string,
): Promise<void> {
  await must('invite-member', { programme: code, email: 'five@test.invalid', department: 'design' }, member)
  const away = (day: number) => ({
    delegate: colleague,
    fromOn: `2090-01-0${day}`,
    toOn: `2090-01-0${day + 1}`,
  })
  const { delegation } = await must('name-delegate', away(1), member)
  await must('end-delegation', { delegation }, colleague)
  await must('name-delegate', away(5), member)
  await must('choose-digest', { wanted: true }, member)
  await must('choose-digest', { wanted: false }, member)
  await must('choose-digest', { wanted: true }, colleague)
  await must('create-calendar-address', { tokenHash: 'a'.repeat(64) }, member)
  await must('revoke-calendar-address', {}, member)
  await must('create-calendar-address', { tokenHash: 'b'.repeat(64) }, member)
}
afterAll(async () => {
  await attacker.leave()
  await db.drop()
})

const sentences = async (): Promise<readonly string[]> =>
  breaksInWords(await verdictOnStored(INSTALLATION_TRAIL), 50)

describe.each(
  (Object.keys(COVERED_TABLES) as TableName[]).filter((name) =>
    coveredTable(name).of.includes('installation'),
  ),
)('of %s', (table) => {
  test('another value in any compared column of any row, a row more and a row less are told', async () => {
    expect(await sentences()).toEqual([])
    const place = async (index: number) => (await attacker.places(table))[index] ?? ''
    for (const index of (await attacker.places(table)).keys()) {
      for (const column of COVERED_TABLES[table].columns.filter(
        (name) => `${table}.${name}` !== 'Person.id',
      )) {
        const putBack = await attacker.tamper(table, column, await place(index))
        const found = await sentences()
        await putBack()
        expect(found.length, `${column}, row ${index}`).toBeGreaterThan(0)
      }
    }
    const takeAway = await attacker.add(table, await place(0))
    const more = await sentences()
    await takeAway()
    expect(more).toEqual([expect.stringContaining('is stored, but no entry made it')])
    expect(await sentences()).toEqual([])
  })
})

describe('every night', () => {
  const verification = () => db.client.verification.findMany({ orderBy: { trailId: 'asc' } })

  test('every trail is verified once, and what was found is kept', async () => {
    const outcomes = await verifyInstalled(never)
    expect(outcomes.map((outcome) => [outcome.code, outcome.intact])).toEqual([
      [INSTALLATION_TRAIL, true],
      [code, true],
    ])
    expect(await verification()).toEqual([
      expect.objectContaining({ intact: true, breaks: 0, clockSteps: 0, unhashedRows: 0 }),
      expect.objectContaining({ trailId: INSTALLATION_TRAIL, intact: true, entries: 25 }),
    ])
    expect(await verifyInstalled(never), 'not due again').toEqual([])
  })

  test('a broken trail, and one that is gone whole, are errors in the log and stay noted', async () => {
    const quiet = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
    const { id } = await db.client.programme.findUniqueOrThrow({ where: { code } })
    await attacker.rows(`UPDATE "Person" SET "name" = 'Somebody Else' WHERE "id" = $1`, [member])
    await attacker.pastTheTrigger(
      `DELETE FROM "Revision"; DELETE FROM "PlanItem"; DELETE FROM "Membership"; DELETE FROM "Programme"; DELETE FROM "TrailSubject" WHERE "id" = '${id}'`,
      `DELETE FROM "TrailEntry" WHERE "trailId" = '${id}'; DELETE FROM "Trail" WHERE "id" = '${id}'`,
    )
    const tomorrow = Date.now() + 24 * 3_600_000
    const outcomes = await verifyInstalled(never, () => tomorrow)
    const said = quiet.mock.calls.join('')
    quiet.mockRestore()
    expect(outcomes).toEqual([
      expect.objectContaining({ code: INSTALLATION_TRAIL, intact: false, breaks: 1 }),
      expect.objectContaining({ code: `trail ${id}, whose subject is gone`, intact: false }),
    ])
    expect(said.match(/"level":"error","message":"A trail is broken\."/g)).toHaveLength(2)
    expect(said).toContain('Somebody Else')
    expect((await verification()).map(({ intact }) => intact)).toEqual([false, false])
  })

  test('an instance leaves it alone while another is at it', async () => {
    const later = Date.now() + 72 * 3_600_000
    await withConnection(db.url, async (client) => {
      await client.query('SELECT pg_advisory_lock(72707371)')
      expect(await verifyInstalled(never, () => later)).toEqual([])
    })
  })

  test('it goes on after a night that failed, until told to stop', async () => {
    const told = new AbortController()
    const quiet = vi.spyOn(process.stderr, 'write').mockReturnValue(true)
    let nights = 0
    await verifyNightly(
      told.signal,
      async () => {
        nights += 1
        if (nights === 1) throw new Error('The database is away.')
        if (nights === 3) told.abort()
        return []
      },
      () => 1,
    )
    expect(nights).toBe(3)
    expect(quiet.mock.calls.join('')).toContain('could not be verified')
    quiet.mockRestore()
  })

  test('the night is two o’clock by the server’s clock, the next one at two itself', () => {
    const hours = (time: string) => msUntilNight(new Date(`2026-03-04T${time}`)) / 3_600_000
    expect([hours('01:00:00'), hours('23:30:00'), hours('02:00:00')]).toEqual([1, 2.5, 24])
  })
})
