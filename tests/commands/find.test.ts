import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { readFindables } from '@/lib/queries/find'
import { foldedSql } from '@/lib/queries/find/rows-saying'
import { folded } from '@/shared/find/folded'
import { foundIn } from '@/shared/find/found'
import { openWorld, type Role, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

/* OWASP ASVS 5.0.0 V8.2.2: what may not be read is not found either. */

let db: FreshDatabase
let world: World
let other: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
  other = await openWorld()
  for (const each of [world, other])
    await each.must('lead', 'add-item', {
      programme: each.code,
      item: {
        stage: 'evaluation',
        title: `Ünderfill of ${each.code}`,
        asks: 'Whether the test finds it.',
        owner: 'design',
        approvers: ['design'],
        evidence: '',
      },
    })
  await world.must('production', 'open-line', { code: 'Line Ä', name: 'A line' })
  await world.must('quality', 'add-supplier', { supplier: 'Ångström & sons' })
  await world.must('design', 'describe-part', {
    code: 'PN-7788',
    values: { description: 'Résistor', kind: 'other' },
    reason: 'For the test.',
  })
})
afterAll(() => db.drop())

/** What a person finds, as "group label". */
async function found(role: Role, query: string, inProgramme?: string): Promise<string[]> {
  const person = {
    personId: world.person[role],
    auditor: role === 'auditor',
    administrator: role === 'administrator',
  }
  const { findables } = await readFindables(person, query, inProgramme)
  return foundIn(query, findables, { here: inProgramme, most: 40 }).flatMap(({ group, matches }) =>
    matches.map(({ label }) => `${group} ${label}`),
  )
}

describe('what lies in a programme', () => {
  const own = () => `item Ünderfill of ${world.code}`
  const foreign = () => `item Ünderfill of ${other.code}`
  test.each(['lead', 'design', 'production', 'quality'] as const)(
    '%s finds that of their own',
    async (role) => {
      const all = await found(role, 'underfill')
      expect(all).toContain(own())
      expect(all).not.toContain(foreign())
    },
  )
  test('an auditor finds that of all', async () =>
    expect(await found('auditor', 'UNDERFILL')).toEqual(expect.arrayContaining([own(), foreign()])))
  test.each(['stranger', 'administrator'] as const)('%s finds none', async (role) => {
    expect(await found(role, 'underfill')).toEqual([])
    expect(await found(role, 'underfill', world.code)).toEqual([])
    const named = await found(role, world.code)
    expect(named.filter((label) => !label.startsWith('person '))).toEqual([])
  })
  test('a programme of others is not found by naming it as the one one is in', async () =>
    expect(await found('lead', 'underfill', other.code)).toEqual([own()]))
  test('a value, a limit and a check are found by their names', async () => {
    const all = (await found('design', 'thickness')).map((label) => label.split(' ')[0])
    expect(new Set(all)).toEqual(new Set(['value', 'limit', 'check']))
  })
  test('an administrator finds people by their address, and nobody else does', async () => {
    const address = (await database().person.findUniqueOrThrow({ where: { id: world.person.quality } })).email
    expect((await found('administrator', address))[0]).toBe('person Test quality')
    expect(await found('lead', address)).toEqual([])
  })
})

describe('what the works keep', () => {
  test.each(['design', 'auditor', 'stranger'] as const)(
    '%s finds it, with or without accents',
    async (role) => {
      expect(await found(role, 'line a')).toContain('works Line Ä')
      expect(await found(role, 'angstrom')).toEqual(['works Ångström & sons'])
      expect(await found(role, 'resistor')).toEqual(['part PN-7788'])
    },
  )
  test('an administrator finds parts only', async () => {
    expect(await found('administrator', 'angstrom')).toEqual([])
    expect(await found('administrator', 'pn-77')).toEqual(['part PN-7788'])
  })
  test('a percent sign or an underscore stands for itself', async () => {
    expect(await found('stranger', '%')).toEqual([])
    expect(await found('stranger', 'pn_7788')).toEqual([])
  })
})

test('the database compares a text as the rules do', async () => {
  const texts = [
    'Ünderfill',
    'Ørsted Łódź đak ı',
    'STRASSE ß',
    'Æon Œuvre',
    'ﬁ 2⁵',
    'Å',
    'É-7 %_\\',
    'Ελληνικά ΤΈΛΟΣ',
    'ЖЁЛТЫЙ Щ',
    // Every letter up to the last of the Cyrillic ones, with those that stand for themselves.
    String.fromCodePoint(...Array.from({ length: 0x0530 - 0x21 }, (_, more) => 0x21 + more)),
  ]
  for (const text of texts) {
    const [row] = await database().$queryRaw<{ text: string }[]>(
      Prisma.sql`SELECT ${foldedSql(Prisma.sql`${text}::text`)} AS "text"`,
    )
    expect(row?.text, text).toBe(folded(text))
  }
})
