import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Outcome } from '@/lib/commands/outcome'
import { database } from '@/lib/db/client'
import { COMMAND_NAMES, faceOf } from '@/shared/commands/all-faces'
import { entryTold } from '@/shared/commands/entry-told'
import type { Rights } from '@/shared/commands/face'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'
import { ACTS_WITHIN, CHANGES_ITS_WORLD, departmentOf, VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, ROLES, type Role, type World } from '@/tests/commands/world'

let db: FreshInstallation
let world: World
beforeAll(async () => {
  db = await freshInstallation()
  world = await openWorld()
})
afterAll(async () => {
  await db.drop()
})

/**
 * Who may, read off the table by hand: written apart from the function the
 * door uses, so that a slip in that function shows here.
 */
function mayBy(row: Rights, role: Role): boolean {
  if (row.scope === 'self') return true
  if (role === 'auditor') return false
  if (row.administrator) return role === 'administrator'
  if (role === 'administrator') return false
  if (row.anyone) return true
  if (role === 'stranger') return false
  if (role === 'lead') return row.lead === true || (row.departments ?? []).includes('design')
  return (row.departments ?? []).includes(departmentOf(role))
}

const entries = () => database().trailEntry.count()
const entryOf = (outcome: Outcome) =>
  database().trailEntry.findFirstOrThrow({ where: { hash: outcome.ok ? outcome.hash : '' } })

describe.each(COMMAND_NAMES)('%s', (command) => {
  test.each(ROLES)('by %s is as the policy table says', async (role) => {
    const place = CHANGES_ITS_WORLD.includes(command) ? await openWorld() : world
    const input = await VALID_INPUT[command](place, role)
    const before = await entries()
    const outcome = await place.asUnparsed(role, command, input)
    if (mayBy(faceOf(command).may, role)) {
      expect(outcome).toMatchObject({ ok: true })
      expect(await entries()).toBe(before + 1 + (ACTS_WITHIN[command] ?? 0))
      const told = entryTold(await entryOf(outcome))
      expect(told).toMatchObject({ subject: expect.stringMatching(/./) })
      expect(outcome).toMatchObject({ leads: told?.leads })
    } else {
      expect(outcome).toMatchObject({
        ok: false,
        message: expect.stringMatching(
          /^(Only |An auditor |An administrator |You belong to no department of the works)/,
        ),
      })
      expect(await entries()).toBe(before)
    }
  })
})

test('the cases are as many as the table has rows', () => {
  expect(Object.keys(VALID_INPUT).sort()).toEqual([...COMMAND_NAMES].sort())
})
