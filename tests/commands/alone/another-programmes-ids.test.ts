import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { faceOf, type CommandName } from '@/shared/commands/all-faces'
import { PROGRAMME_COMMANDS } from '@/tests/commands/every-command-once'
import { CHANGES_ITS_WORLD, departmentOf, VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, ROLES, type Role, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let theirs: World
let ours: World
beforeAll(async () => {
  db = await freshDatabase()
  theirs = await openWorld()
  ours = await openWorld()
})
afterAll(() => db.drop())

const ABOUT_A_PROGRAMME = PROGRAMME_COMMANDS.filter((command) => command !== 'open-programme')

/** Somebody of a programme who may give the command there. */
function whoMay(command: CommandName): Role {
  const { lead, departments = [] } = faceOf(command).may
  return ROLES.find((role) => departments.includes(departmentOf(role))) ?? (lead ? 'lead' : 'design')
}

const placeFor = async (command: CommandName): Promise<World> =>
  CHANGES_ITS_WORLD.includes(command) ? openWorld() : theirs

/** Every row that belongs to a programme, and its trail, as one text. */
async function everythingOf(code: string): Promise<string> {
  const { id } = await database().programme.findUniqueOrThrow({ where: { code } })
  const tables = await database().$queryRaw<{ name: string; owner: string }[]>`
    SELECT table_name AS name, column_name AS owner FROM information_schema.columns
    WHERE table_schema = 'public' AND udt_name = 'uuid' AND column_name IN ('programmeId', 'trailId') ORDER BY 1`
  expect(tables.length).toBeGreaterThan(10)
  const rows = await Promise.all(
    tables.map(({ name, owner }) =>
      database().$queryRawUnsafe(
        `SELECT '${name}' AS t, r::text FROM "${name}" r WHERE r."${owner}" = '${id}' ORDER BY 2`,
      ),
    ),
  )
  const [programme, trail] = await Promise.all([
    database().programme.findUnique({ where: { id } }),
    database().trail.findUnique({ where: { id } }),
  ])
  return JSON.stringify([rows, programme, trail])
}

describe.each(ABOUT_A_PROGRAMME)('%s', (command) => {
  test('with what belongs to another programme touches nothing there, and here only what it says it did', async () => {
    const role = whoMay(command)
    const place = await placeFor(command)
    const input = await VALID_INPUT[command](place, role)
    const [there, here] = [await everythingOf(place.code), await everythingOf(ours.code)]
    const outcome = await ours.asUnparsed(role, command, { ...input, programme: ours.code })
    expect(await everythingOf(place.code)).toBe(there)
    expect((await everythingOf(ours.code)) === here).toBe(!outcome.ok)
  })

  test('in another programme is refused to who may give it in their own', async () => {
    const role = whoMay(command)
    const place = await placeFor(command)
    const input = await VALID_INPUT[command](place, role)
    const before = await everythingOf(place.code)
    expect(await ours.asUnparsed(role, command, input)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^Only /),
    })
    expect(await everythingOf(place.code)).toBe(before)
  })
})

test('a code that is taken tells nobody whose programme it is, nor its title', async () => {
  const { title } = await database().programme.update({
    where: { code: theirs.code },
    data: { title: 'A board nobody is to hear of' },
  })
  const outcome = await ours.as('design', 'open-programme', {
    ...(await VALID_INPUT['open-programme'](ours, 'design')),
    code: theirs.code,
  })
  expect(outcome).toMatchObject({ ok: false, fields: { code: expect.stringContaining('is taken') } })
  expect(JSON.stringify(outcome)).not.toContain(title)
})
