import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { database } from '@/lib/db/client'
import { wordsSought } from '@/shared/commands/words-sought'
import { COMMAND_NAMES, faceOf, type CommandName } from '@/shared/commands/all-faces'
import { entryTold, recordedIn } from '@/shared/commands/entry-told'
import { formatNumber } from '@/shared/quantity/format'
import { CHANGES_ITS_WORLD, VALID_INPUT } from '@/tests/commands/valid-inputs'
import { openWorld, ROLES, type World } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

/*
 * An auditor reads entries, not payloads. Whatever is measured, counted, priced or named in an entry is read in its
 * sentence, numbers with what they are of; what changed is read as before → after. Common practice, no published source.
 */

let db: FreshInstallation
let world: World
beforeAll(async () => {
  db = await freshInstallation()
  world = await openWorld()
})
afterAll(async () => {
  await db.drop()
})

/** Numbers that say where something is kept, or that are told by their count. */
const NOT_TOLD: readonly string[] = [
  'cover', // what a signature covers has a page of its own
  'found', // so has what the findings found then
  'findingData',
  'seen', // the revision that was before a person's eyes
  'size', // of a file
  'plan', // what every programme starts with
  'head', // where another programme's trail stood
  'files', // of a board: named by their roles
  'xMm', // a place on the board stands with the defect
  'yMm',
  'lessons',
  'position', // of an item in the plan
  'written', // today's values, which an alternative that says nothing of them keeps
]

/** The counts of what an entry is the nth of: told where people call it by that number. */
const ORDINALS: Readonly<Partial<Record<CommandName, string>>> = {
  'set-money-ceiling': 'number',
  'correct-lot': 'number',
  'correct-lot-test': 'number',
  'correct-record': 'number',
  'correct-inspection': 'number',
}

/** What an entry records of numbers, as they are written: 0.35, 240, 98. */
function numbersIn(value: unknown): string[] {
  if (typeof value === 'number') return [formatNumber(value, 6)]
  if (Array.isArray(value)) return value.flatMap(numbersIn)
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, inner]) => (NOT_TOLD.includes(key) ? [] : numbersIn(inner)))
}

/** Of a correction or a revision that records all values, those that it changed. */
function changedOf(recorded: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const name = 'after' in recorded ? 'after' : 'values'
  const { before, [name]: after } = recorded as Readonly<Record<string, Readonly<Record<string, unknown>>>>
  if (!before || !after || typeof before !== 'object') return recorded
  const differs = (key: string) => JSON.stringify(before[key]) !== JSON.stringify(after[key])
  const only = (values: Readonly<Record<string, unknown>>) =>
    Object.fromEntries(Object.entries(values).filter(([key]) => differs(key)))
  return { ...recorded, before: only(before), [name]: only(after) }
}

/** The entry of a command by the first who may, with the payload. */
async function entryOf(command: CommandName) {
  const place = CHANGES_ITS_WORLD.includes(command) ? await openWorld() : world
  for (const role of ROLES) {
    const outcome = await place.asUnparsed(role, command, await VALID_INPUT[command](place, role))
    if (outcome.ok) return database().trailEntry.findFirstOrThrow({ where: { hash: outcome.hash } })
  }
  throw new Error(`Nobody could ${command}.`)
}

/** Commands whose sentence needs no more than whom it is about: the verb says the rest. */
const SAYS_ALL_BY_ITS_VERB: readonly CommandName[] = [
  'add-supplier',
  'change-own-password',
  'close-supplier',
  'create-calendar-address',
  'create-machine-token',
  'disable-person',
  'enable-person',
  'resolve-comment',
  'reset-password',
  'revoke-calendar-address',
  'revoke-machine-token',
  'take-instrument-out-of-use',
]

describe.each(COMMAND_NAMES)('the entry of %s', (command) => {
  test('says what it is about, every number with what it is of, and what was before', async () => {
    const entry = await entryOf(command)
    const told = entryTold(entry)
    const recorded = recordedIn(entry.payload) as Readonly<Record<string, unknown>>
    const sentence = [told?.subject, told?.what, told?.words].filter(Boolean).join(' | ')
    expect(told?.subject).toMatch(/\p{L}{2}/u)
    const { [ORDINALS[command] ?? '']: _, ...measured } = recorded
    for (const number of numbersIn(changedOf(measured))) {
      expect(sentence, `${number} of ${entry.payload}`).toContain(number)
      expect(sentence).not.toMatch(new RegExp(`(^|[|;,] )${number}($|[|;])`))
    }
    if (!SAYS_ALL_BY_ITS_VERB.includes(command)) expect(told?.what ?? '', sentence).toMatch(/\p{L}/u)
    const { before } = recorded
    if (before !== undefined && before !== null && before !== '')
      expect(sentence, entry.payload).toMatch(/→|instead of/)
  })

  test('is found by the words that are shown of what was done', () => {
    for (const { word, commands } of wordsSought(faceOf(command).done))
      if (word.length >= 3) expect(commands, word).toContain(command)
  })
})
