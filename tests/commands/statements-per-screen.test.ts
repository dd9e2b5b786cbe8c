import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { SignedIn } from '@/lib/auth/session'
import { auditSearchFrom, readAudit, readTrails } from '@/lib/queries/audit'
import { readCompanyRules, readDifferingProgrammes } from '@/lib/queries/company-rules'
import { deskOf } from '@/lib/queries/desk'
import { readFindables } from '@/lib/queries/find'
import { readTraining, readValidMax } from '@/lib/queries/people-of-the-works'
import { readProgramme } from '@/lib/queries/programme-reader'
import { readProgrammes } from '@/lib/queries/programmes'
import { readTrail, trailSearchFrom } from '@/lib/queries/trail'
import { openWorld, programmeInput, type World } from '@/tests/commands/world'
import { statementsOf } from '@/tests/setup/statements-of'
import { freshDatabase, type FreshDatabase } from '@/tests/setup/database'

const FEW = 3
const MANY = 40
/** One for each table that facts of a programme come from, and two around them. */
const STATEMENTS_A_PROGRAMME = 31

let db: FreshDatabase
let world: World
beforeAll(async () => {
  db = await freshDatabase()
  world = await openWorld()
})
afterAll(() => db.drop())

const lead = (): SignedIn => ({
  personId: world.person.lead,
  name: 'Test lead',
  email: 'lead@test.invalid',
  auditor: false,
  administrator: false,
  worksDepartment: null,
  mustChangePassword: false,
  hasPassword: true,
  signedInAt: 0,
  sessionId: '00000000-0000-7000-8000-000000000000',
})

/** What a screen asks the database for, with the person's programmes as they stand. */
const SCREENS: Readonly<Record<string, () => Promise<unknown>>> = {
  'the desk': () => deskOf(lead()),
  'the programmes': () => readProgrammes(lead(), '', 1),
  'the route card and its items': () => readProgramme(world.code, lead()),
  'the company rules and who differs': async () => {
    await readDifferingProgrammes(lead(), await readCompanyRules())
  },
  'the people of the works': async () => {
    await readTraining()
    await readValidMax()
  },
  'a programme’s trail': async () => {
    const read = await readProgramme(world.code, lead())
    return (
      read.found && read.view && readTrail(read.view.state.programme.id, trailSearchFrom({ text: 'open' }))
    )
  },
  'finding anything': () => readFindables(lead(), 'flux', world.code),
  'the audit': async () => {
    await readAudit(lead(), auditSearchFrom({}))
    await readTrails(lead(), '')
  },
}

async function openUpTo(programmes: number, already: number): Promise<void> {
  for (let index = already; index < programmes; index++)
    await world.must('lead', 'open-programme', programmeInput(`${world.code}-${index}`))
}

const counted: Record<'first' | 'again', Record<string, Record<number, number>>> = { first: {}, again: {} }

beforeAll(async () => {
  let already = 1
  for (const programmes of [FEW, MANY]) {
    await openUpTo(programmes, already)
    already = programmes
    for (const [screen, read] of Object.entries(SCREENS)) {
      ;(counted.first[screen] ??= {})[programmes] = await statementsOf(read)
      ;(counted.again[screen] ??= {})[programmes] = await statementsOf(read)
    }
  }
})

describe.each(Object.keys(SCREENS))('%s', (screen) => {
  test('takes as many statements with forty programmes as with three, once each was judged', () => {
    const { [FEW]: few = 0, [MANY]: many = 0 } = counted.again[screen] ?? {}
    expect(few).toBeGreaterThan(0)
    expect(many).toBe(few)
    expect(many).toBeLessThanOrEqual(12)
  })

  test('reads each programme that has changed once, in no more statements than kinds of facts', () => {
    const { [MANY]: first = Infinity } = counted.first[screen] ?? {}
    const { [MANY]: again = 0 } = counted.again[screen] ?? {}
    expect(first - again).toBeLessThanOrEqual((MANY - FEW) * STATEMENTS_A_PROGRAMME)
  })
})
