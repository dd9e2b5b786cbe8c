import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { eachAtItsMoment } from '@/lib/db/row-reader'
import { allTrails } from '@/lib/trail/all-trails'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { COMMAND_NAMES, faceOf } from '@/shared/commands/all-faces'
import {
  COVERED_FILES,
  COVERED_TABLES,
  coveredTable,
  TABLES_LEFT_OUT,
  type TableName,
} from '@/shared/stored/covered-tables'
import { breaksInWords } from '@/shared/stored/stored-verdict'
import { Attacker } from '@/tests/commands/attacker'
import {
  everyCommandOnce,
  PROGRAMME_COMMANDS,
  somethingInStore,
  somePartOfTheWorks,
  somethingOfTheWorks,
  whatIsKeptOnce,
} from '@/tests/commands/every-command-once'
import type { World } from '@/tests/commands/world'
import { freshInstallation, type FreshInstallation } from '@/tests/setup/installation'

let db: FreshInstallation
let world: World
let id: string
let kept: { people: string; companyRules: string }
let trails: Partial<Record<TableName, string>>
let attacker: Attacker
const trailOf = (table: TableName): string => trails[table] ?? id
beforeAll(async () => {
  db = await freshInstallation()
  world = await everyCommandOnce()
  id = (await db.client.programme.findUniqueOrThrow({ where: { code: world.code } })).id
  const machine = await somethingOfTheWorks(world)
  kept = await whatIsKeptOnce(world)
  const supplier = await somethingInStore(world)
  const part = await somePartOfTheWorks(world)
  // The bare tables of the works, and what only they hold, are attacked in the trail that tells of them.
  trails = {
    ...{ Machine: machine.id, Log: machine.id, MachineToken: machine.id, Line: machine.lineId },
    ...{ Supplier: supplier.id, Lot: supplier.id, LotTest: supplier.id, LotAllocation: supplier.id },
    ...{ CompanyRule: kept.companyRules, CompanyPreference: kept.companyRules },
    ...{ Part: part.id, PartRevision: part.id, PartApproval: part.id },
    ReadingBatch: supplier.id,
  }
  attacker = await Attacker.enter()
})
afterAll(async () => {
  await attacker.leave()
  await db.drop()
})

const TABLES = (Object.keys(COVERED_TABLES) as TableName[]).filter(
  (table) => !coveredTable(table).of.includes('installation'),
)
const sentences = async (trailId = id): Promise<readonly string[]> =>
  breaksInWords(await verdictOnStored(trailId), 1000)

test('every table and column of the schema is compared, or left out with a reason', async () => {
  const columns = await attacker.rows<{ table: string; column: string }>(
    `SELECT table_name AS "table", column_name AS "column" FROM information_schema.columns
     WHERE table_schema = 'public' AND table_name NOT LIKE '\\_%'`,
  )
  const schema = new Map<string, string[]>()
  for (const { table, column } of columns) schema.set(table, [...(schema.get(table) ?? []), column])
  const declared = new Map<string, string[]>([
    [COVERED_FILES.table, [...COVERED_FILES.columns, ...Object.keys(COVERED_FILES.leftOut)]],
    ...(Object.keys(COVERED_TABLES) as TableName[]).map((table): [string, string[]] => {
      const { columns: compared, leftOut = {}, owner } = coveredTable(table)
      return [table, [...new Set([...compared, ...Object.keys(leftOut), ...(owner ? [owner] : [])])]]
    }),
  ])
  const undeclared = [...schema.keys()].filter((table) => !declared.has(table) && !TABLES_LEFT_OUT[table])
  expect(undeclared).toEqual([])
  for (const [table, names] of declared) expect([...names].sort(), table).toEqual(schema.get(table)?.sort())
  for (const table of Object.keys(TABLES_LEFT_OUT)) expect(schema.has(table), table).toBe(true)
})

test('a programme in which every command was performed is whole, down to the last column', async () => {
  const { intact, chain, stored } = await verdictOnStored(id)
  expect(breaksInWords({ intact, chain, stored }, 20)).toEqual([])
  expect(intact).toBe(true)
  expect(stored).toMatchObject({ unhashedRows: 0, files: 6, breakCount: 0 })
  expect(chain.clockSteps).toEqual([])
  const performed = await attacker.rows<{ command: string }>(
    'SELECT DISTINCT "command" FROM "TrailEntry" WHERE "trailId" = $1',
    [id],
  )
  expect(performed.map(({ command }) => command).sort()).toEqual([...PROGRAMME_COMMANDS].sort())
})

test('the people of the works and the company rules are whole, with each of their commands', async () => {
  const performedIn = async (trailId: string): Promise<string[]> =>
    (
      await attacker.rows<{ command: string }>(
        'SELECT DISTINCT "command" FROM "TrailEntry" WHERE "trailId" = $1 ORDER BY 1',
        [trailId],
      )
    ).map(({ command }) => command)
  for (const trailId of Object.values(kept)) {
    const { intact, chain, stored } = await verdictOnStored(trailId)
    expect(breaksInWords({ intact, chain, stored }, 20)).toEqual([])
    expect(intact).toBe(true)
  }
  expect(await performedIn(kept.people)).toEqual([
    'add-record',
    'attach-certificate',
    'correct-record',
    'withdraw-certificate',
    'withdraw-record',
  ])
  expect(await performedIn(kept.companyRules)).toEqual([
    'prefer-value',
    'state-company-rule',
    'withdraw-company-rule',
    'withdraw-preference',
  ])
})

test.each(['Record', 'Evidence', 'Correction'] as const)(
  'of %s with the people of the works, another value in any compared column is told',
  async (table) => {
    for (const column of COVERED_TABLES[table].columns) {
      const [place = ''] = await attacker.places(table, kept.people)
      const putBack = await attacker.tamper(table, column, place)
      const { intact, stored } = await verdictOnStored(kept.people)
      await putBack()
      expect(intact, column).toBe(false)
      expect(stored.breaks, column).toContainEqual(
        expect.objectContaining({ table, kind: expect.stringMatching(/^(changed|missing)$/) }),
      )
    }
    expect(await sentences(kept.people)).toEqual([])
  },
)

test('a supplier’s trail in which every command about its lots was performed is whole', async () => {
  const verdict = await verdictOnStored(trails.Supplier ?? '')
  expect(breaksInWords(verdict, 20)).toEqual([])
  expect(verdict.stored).toMatchObject({ unhashedRows: 0, files: 1, breakCount: 0 })
  const performed = await attacker.rows<{ command: string }>(
    'SELECT DISTINCT "command" FROM "TrailEntry" WHERE "trailId" = $1',
    [trails.Supplier],
  )
  expect(performed.map(({ command }) => command).sort()).toEqual(
    COMMAND_NAMES.filter((name) => {
      const { of, opens, worksToo } = faceOf(name).may
      return of === 'supplier' || opens === 'supplier' || worksToo?.includes('supplier')
    }).sort(),
  )
})

describe.each(TABLES)('of %s', (table) => {
  const places = async (): Promise<string[]> => {
    const found = await attacker.places(table, trailOf(table))
    expect(found.length).toBeGreaterThan(0)
    return found
  }

  test('another value in any compared column is told, in the first row, the last and one between', async () => {
    for (const column of COVERED_TABLES[table].columns) {
      const last = (await places()).length - 1
      for (const index of new Set([0, Math.floor(last / 2), last])) {
        const place = (await places())[index] ?? ''
        const putBack = await attacker.tamper(table, column, place)
        const { intact, stored } = await verdictOnStored(trailOf(table))
        await putBack()
        expect(intact, `${column}, row ${index}`).toBe(false)
        expect(stored.breaks, `${column}, row ${index}`).toContainEqual(
          expect.objectContaining({ table, kind: expect.stringMatching(/^(changed|missing)$/) }),
        )
      }
    }
    expect(await sentences(trailOf(table))).toEqual([])
  })

  test('a row that is taken away is told', async () => {
    let removed = 0
    for (const index of (await places()).keys()) {
      const putBack = await attacker.remove(table, (await places())[index] ?? '')
      if (!putBack) continue
      removed += 1
      const { stored } = await verdictOnStored(trailOf(table))
      await putBack()
      expect(stored.breaks).toContainEqual(expect.objectContaining({ table, kind: 'missing' }))
    }
    // The database itself keeps what has rows.
    const keptByItsRows = ['Programme', 'Line', 'Machine', 'Supplier', 'Part'].includes(table)
    expect(removed).toBeGreaterThan(keptByItsRows ? -1 : 0)
    expect(await sentences(trailOf(table))).toEqual([])
  })

  test('a row that no entry made is told', async () => {
    const takeAway = await attacker.add(table, (await places())[0] ?? '')
    const verdicts = await Promise.all((await subjects()).map((trailId) => verdictOnStored(trailId)))
    await takeAway()
    const breaks = verdicts.flatMap(({ stored }) => stored.breaks)
    expect(breaks).toContainEqual(expect.objectContaining({ table, kind: 'unrecorded' }))
    expect(await sentences(trailOf(table))).toEqual([])
  })
})

const subjects = async (): Promise<string[]> => (await allTrails(eachAtItsMoment)).map((row) => row.id)
