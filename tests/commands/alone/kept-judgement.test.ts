import { afterAll, beforeAll, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { LEAVE_FACTS } from '@/lib/programme/installation-mark'
import { judgedProgramme } from '@/lib/programme/judged'
import { loadState } from '@/lib/programme/load-state'
import { dateOf } from '@/shared/quantity/calendar'
import { COMMAND_NAMES, faceOf, type CommandName } from '@/shared/commands/all-faces'
import { VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, type World } from '@/tests/commands/world'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

const facts = async () => {
  const { id } = await database().programme.findUniqueOrThrow({ where: { code: world.code } })
  return loadState(database(), id, dateOf(new Date()))
}

const LEAVING = COMMAND_NAMES.filter((command) => LEAVE_FACTS.includes(command))

test.each(LEAVING)('%s leaves the facts of a programme, and its judgement is kept', async (command) => {
  const before = await judgedProgramme(world.code)
  const factsBefore = await facts()
  await give(command)
  expect(await facts()).toEqual(factsBefore)
  expect(await judgedProgramme(world.code)).toBe(before)
})

test('a person of the programme who can sign in no longer, and again, leaves its facts too', async () => {
  const before = await judgedProgramme(world.code)
  const about = { personId: world.person.secondDesign, reason: 'A test' }
  await world.must('administrator', 'disable-person', about)
  await world.must('administrator', 'enable-person', about)
  expect(await facts()).toEqual(before?.state)
  expect(await judgedProgramme(world.code)).toBe(before)
})

test('a new name, and an instrument, are seen at once', async () => {
  const personId = world.person.secondDesign
  const { email } = await database().person.findUniqueOrThrow({ where: { id: personId } })
  await world.must('administrator', 'change-person', {
    personId,
    email: email ?? '',
    name: 'Anew',
    rights: 'member',
  })
  expect((await judgedProgramme(world.code))?.state.members.map(({ name }) => name)).toContain('Anew')
  await give('add-instrument')
  const { instruments } = (await judgedProgramme(world.code))!.state.facts.records
  expect(instruments).toEqual((await facts()).facts.records.instruments)
  expect(instruments.length).toBeGreaterThan(0)
})

test('only entries of the installation’s own trail are passed over', () => {
  for (const command of LEAVING) expect(faceOf(command).may.scope).not.toBe('programme')
})

async function give<N extends CommandName>(command: N): Promise<void> {
  const by = faceOf(command).may.anyone ? 'design' : 'administrator'
  const outcome = await world.as(by, command, await VALID_INPUT[command](world, by))
  expect(outcome).toMatchObject({ ok: true })
}
