import { afterAll, beforeAll, expect, test } from 'vitest'
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
import { PROGRAMME_COMMANDS } from '@/tests/commands/every-command-once'
import { everythingRecorded, type EverythingRecorded } from '@/tests/commands/everything-recorded'

/* What every command stores is read back whole, down to the last column. */

let all: EverythingRecorded
beforeAll(async () => {
  all = await everythingRecorded()
})
afterAll(() => all.leave())

test('every table and column of the schema is compared, or left out with a reason', async () => {
  const columns = await all.attacker.rows<{ table: string; column: string }>(
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
  const { intact, chain, stored } = await verdictOnStored(all.id)
  expect(breaksInWords({ intact, chain, stored }, 20)).toEqual([])
  expect(intact).toBe(true)
  expect(stored).toMatchObject({ unhashedRows: 0, files: 6, breakCount: 0 })
  expect(chain.clockSteps).toEqual([])
  const performed = await all.attacker.rows<{ command: string }>(
    'SELECT DISTINCT "command" FROM "TrailEntry" WHERE "trailId" = $1',
    [all.id],
  )
  expect(performed.map(({ command }) => command).sort()).toEqual([...PROGRAMME_COMMANDS].sort())
})

test('the people of the works and the company rules are whole, with each of their commands', async () => {
  const performedIn = async (trailId: string): Promise<string[]> =>
    (
      await all.attacker.rows<{ command: string }>(
        'SELECT DISTINCT "command" FROM "TrailEntry" WHERE "trailId" = $1 ORDER BY 1',
        [trailId],
      )
    ).map(({ command }) => command)
  for (const trailId of Object.values(all.kept)) {
    const { intact, chain, stored } = await verdictOnStored(trailId)
    expect(breaksInWords({ intact, chain, stored }, 20)).toEqual([])
    expect(intact).toBe(true)
  }
  expect(await performedIn(all.kept.people)).toEqual([
    'add-record',
    'attach-certificate',
    'correct-record',
    'withdraw-certificate',
    'withdraw-record',
  ])
  expect(await performedIn(all.kept.companyRules)).toEqual([
    'prefer-value',
    'state-company-rule',
    'withdraw-company-rule',
    'withdraw-preference',
  ])
})

test('a supplier’s trail in which every command about its lots was performed is whole', async () => {
  const verdict = await verdictOnStored(all.trailOf('Supplier'))
  expect(breaksInWords(verdict, 20)).toEqual([])
  expect(verdict.stored).toMatchObject({ unhashedRows: 0, files: 1, breakCount: 0 })
  const performed = await all.attacker.rows<{ command: string }>(
    'SELECT DISTINCT "command" FROM "TrailEntry" WHERE "trailId" = $1',
    [all.trailOf('Supplier')],
  )
  expect(performed.map(({ command }) => command).sort()).toEqual(
    COMMAND_NAMES.filter((name) => {
      const { of, opens, worksToo } = faceOf(name).may
      return of === 'supplier' || opens === 'supplier' || worksToo?.includes('supplier')
    }).sort(),
  )
})
