import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { Prisma } from '@/lib/db/generated/client'
import { readFindables } from '@/lib/queries/find'
import { foldedSql } from '@/lib/queries/find/rows-saying'
import { folded } from '@/shared/find/folded'
import { foundIn } from '@/shared/find/found'
import { VALID_INPUT } from '@/tests/commands/valid-inputs'
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

describe('what is deliberated in a programme', () => {
  beforeAll(async () => {
    for (const each of [world, other]) await deliberate(each)
  })
  /** One of each, told apart by the programme's code. */
  const labels = (of: World) =>
    [
      `concession Concession 1: Quibble over ${of.code}`,
      `nonconformity Nonconformity 1: Quibble of ${of.code}`,
      `notice Change notice 1: Quibble of ${of.code}`,
      `study Option study 1: Quibble of ${of.code}`,
      `review Design review 1: Quibble of ${of.code}`,
      `lesson Lesson 1: Quibble of ${of.code}`,
    ].sort()
  test.each(['lead', 'design', 'production', 'quality'] as const)(
    '%s finds one of each kind in their own, in it and outside any',
    async (role) => {
      expect((await found(role, 'quibble', world.code)).sort()).toEqual(labels(world))
      expect((await found(role, 'quibble')).sort()).toEqual(labels(world))
    },
  )
  test('an auditor finds those of all', async () =>
    expect((await found('auditor', 'quibble')).sort()).toEqual([...labels(world), ...labels(other)].sort()))
  test.each(['stranger', 'administrator'] as const)('%s finds none', async (role) => {
    expect(await found(role, 'quibble')).toEqual([])
    expect(await found(role, 'quibble', world.code)).toEqual([])
  })
  test('by what it says beside its title, and by its kind and number', async () => {
    expect(await found('design', 'solder balls')).toEqual([
      `nonconformity Nonconformity 1: Quibble of ${world.code}`,
    ])
    expect(await found('design', 'broad land')).toEqual([`study Option study 1: Quibble of ${world.code}`])
    expect((await found('design', 'review 1'))[0]).toBe(`review Design review 1: Quibble of ${world.code}`)
  })
  test('a lesson once accepted is found by everybody but an administrator, who reads no lessons', async () => {
    await other.must('quality', 'decide-lesson', {
      programme: other.code,
      lesson: 1,
      accept: true,
      reason: 'It holds for every board.',
    })
    const accepted = `lesson Quibble of ${other.code}`
    for (const role of ['design', 'stranger'] as const)
      expect(await found(role, `quibble ${other.code}`)).toEqual([accepted])
    expect(await found('auditor', `quibble ${other.code}`)).not.toContain(accepted)
    expect(await found('administrator', 'quibble')).toEqual([])
  })
})

/** One of each kind that people put before each other. */
async function deliberate(of: World): Promise<void> {
  const [programme, title] = [of.code, `Quibble of ${of.code}`]
  const asked = await VALID_INPUT['request-concession'](of, 'production')
  await of.must('secondProduction', 'request-concession', { ...asked, why: `Quibble over ${of.code}` })
  const opened = await VALID_INPUT['open-nonconformity'](of, 'design')
  await of.must('design', 'open-nonconformity', { ...opened, title })
  await of.must('design', 'open-change-notice', { programme, title, reason: 'For the test.' })
  const study = await VALID_INPUT['open-option-study'](of, 'design')
  const [first, ...more] = study.alternatives
  await of.must('lead', 'open-option-study', {
    ...study,
    title,
    alternatives: [{ ...first!, name: 'Broad land' }, ...more],
  })
  await of.must('design', 'open-review', { ...(await VALID_INPUT['open-review'](of, 'design')), title })
  await of.must('secondDesign', 'propose-lesson', {
    programme,
    title,
    learnt: 'The first readings of a shift are not yet the process.',
    source: { kind: 'item', key: 'programme-frame' },
    change: {
      kind: 'item',
      item: {
        stage: 'control',
        title: `Start of the shift in ${of.code}`,
        asks: 'From when on do readings count?',
        owner: 'production',
        approvers: ['production', 'quality'],
        evidence: '',
      },
    },
  })
}

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
