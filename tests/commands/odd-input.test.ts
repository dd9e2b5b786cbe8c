import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { checkPassword } from '@/lib/auth/check-password'
import type { InputOf } from '@/lib/commands/all-commands'
import { database } from '@/lib/db/client'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

const NOWHERE = { address: '192.0.2.1', origin: '192.0.2.1', userAgent: '' }

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

const lot = (given: Partial<InputOf<'receive-lot'>>): InputOf<'receive-lot'> => ({
  programme: world.code,
  code: 'LOT-1',
  kind: 'bare board',
  part: 'A board',
  supplier: 'A supplier',
  dateCode: '',
  quantity: 10,
  receivedOn: '2026-01-07',
  temperatureC: 20,
  relativeHumidityPct: 40,
  packing: 'Sealed',
  supplierResult: '',
  ...given,
})

describe('a text that cannot be kept', () => {
  test.each([
    ['U+0000, which PostgreSQL has no room for', 'A\0board'],
    ['a lone surrogate, which UTF-8 has no form for', 'A \ud800 board'],
    ['an override that shows letters in another order', 'A \u202edraob'],
  ])('is refused at its field: %s', async (_what, part) => {
    const outcome = await world.as('quality', 'receive-lot', lot({ part }))
    expect(outcome).toMatchObject({ ok: false, fields: { part: expect.stringMatching(/^The text holds /) } })
  })

  // Unicode 16.0, DerivedCoreProperties.txt (Default_Ignorable_Code_Point), and the Braille cell without dots.
  test.each([
    ['spaces of no width', '\u200b\u200b'],
    ['a joiner', '\u200d'],
    ['marks of direction', '\u200e\u200f\u061c'],
    ['a byte order mark between blanks', ' \u2060\ufeff '],
    ['a Hangul filler', '\u3164'],
    ['an empty Braille cell', '\u2800'],
    ['tags', '\u{e0041}'],
  ])('as nothing of it is seen, is refused at its field: %s', async (_what, unseen) => {
    for (const field of ['part', 'supplierResult'] as const) {
      expect(await world.as('quality', 'receive-lot', lot({ [field]: unseen }))).toMatchObject({
        ok: false,
        fields: { [field]: 'The text holds nothing that can be seen. Type it again.' },
      })
    }
    const title = await world.as('design', 'open-programme', {
      code: 'UNSEEN',
      title: unseen,
      department: 'design',
      productClass: '2',
      alloyFamily: 'tin-lead',
      serviceYears: 10,
      environment: 'GB',
      annualVolume: 50,
    })
    expect(title).toMatchObject({ ok: false, fields: { title: expect.stringContaining('seen') } })
  })

  test('as the name of a column in a record of a list, too', async () => {
    const outcome = await world.as('quality', 'add-readings', {
      machine: 'No machine',
      log: 'NO-LOG',
      readings: { count: 1, columns: { at: [0], note: ['x\0y'] } },
      file: null,
      mapping: { 'a\0b': 'c' },
    })
    expect(outcome).toMatchObject({
      ok: false,
      fields: { 'readings.columns.note.0': expect.any(String), mapping: expect.any(String) },
    })
  })

  test('as an address at the sign-in is told like any unknown one', async () => {
    const typed = { email: 'ad\0a@example.invalid', password: 'a password that is long' }
    expect(await checkPassword(typed, NOWHERE)).toEqual({
      ok: false,
      message: 'The address or the password is not right.',
    })
  })
})

test('a value nested deeper than anything that is recorded is refused, not failed at', async () => {
  let value: unknown = 1
  for (let depth = 0; depth < 20_000; depth++) value = [value]
  const outcome = await world.asUnparsed('lead', 'revise-parameter', {
    programme: world.code,
    parameter: 'service-years',
    value,
    seen: 1,
    reason: 'Test',
  })
  expect(outcome).toMatchObject({ ok: false, message: expect.stringContaining('nested') })
})

test('minus zero, as "-0" is read, is kept as zero', async () => {
  const outcome = await world.as('quality', 'receive-lot', lot({ code: 'COLD', temperatureC: -0 }))
  expect(outcome).toMatchObject({ ok: true })
  const stored = await database().lot.findFirstOrThrow({ where: { code: 'COLD' } })
  expect(stored.storage).toMatchObject({ temperatureC: 0 })
})

test('two codes that look alike are one: letters are composed (Unicode NFC)', async () => {
  expect(await world.as('quality', 'receive-lot', lot({ code: 'Z\u00fcg-1' }))).toMatchObject({ ok: true })
  expect(await world.as('quality', 'receive-lot', lot({ code: 'Zu\u0308g-1' }))).toMatchObject({
    ok: false,
    fields: { code: 'This lot code is taken.' },
  })
})

describe('a day to come', () => {
  const trained = { worker: 'A', skill: 'hand-soldering', passedOn: '2026-01-12', certificate: 'H-1' }
  test('is no day on which something recorded has happened, in any line of a list', async () => {
    const row = (spentOn: string) => ({ spentOn, costClass: 'appraisal', amount: 120, what: 'Inspection' })
    const outcome = await world.as('quality', 'add-record', {
      programme: world.code,
      kind: 'quality-cost',
      rows: [row('2026-01-02'), row('2150-01-01')],
    })
    expect(outcome).toMatchObject({
      ok: false,
      fields: { 'rows.1.spentOn': expect.stringContaining('future') },
    })
  })
  test('is one until which something recorded holds', async () => {
    const outcome = await world.as('production', 'add-record', {
      works: { kind: 'people', code: 'people' },
      kind: 'training',
      rows: [{ ...trained, expiresOn: '2150-01-01' }],
    })
    expect(outcome).toMatchObject({ ok: true })
  })
})
