import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { eachAtItsMoment } from '@/lib/db/row-reader'
import { allTrails } from '@/lib/trail/all-trails'
import { verdictOnStored } from '@/lib/trail/verify-stored'
import { COVERED_TABLES, coveredTable, type TableName } from '@/shared/stored/covered-tables'
import { breaksInWords } from '@/shared/stored/stored-verdict'
import { everythingRecorded, type EverythingRecorded } from '@/tests/commands/everything-recorded'

/* Whatever somebody changes, takes away or adds in the tables past the door is told. */

let all: EverythingRecorded
beforeAll(async () => {
  all = await everythingRecorded()
})
afterAll(() => all.leave())

const TABLES = (Object.keys(COVERED_TABLES) as TableName[]).filter(
  (table) => !coveredTable(table).of.includes('installation'),
)
/** Whose rows others hang on, and whose id names a trail or a place in one. */
const HAVE_TRAILS: readonly TableName[] = ['Programme', 'Line', 'Machine', 'Supplier', 'Part']
const sentences = async (trailId: string): Promise<readonly string[]> =>
  breaksInWords(await verdictOnStored(trailId), 1000)

test.each(['Record', 'Evidence', 'Correction'] as const)(
  'of %s with the people of the works, another value in any compared column is told',
  async (table) => {
    for (const column of COVERED_TABLES[table].columns) {
      const [place = ''] = await all.attacker.places(table, all.kept.people)
      const putBack = await all.attacker.tamper(table, column, place)
      const { intact, stored } = await verdictOnStored(all.kept.people)
      await putBack()
      expect(intact, column).toBe(false)
      expect(stored.breaks, column).toContainEqual(
        expect.objectContaining({ table, kind: expect.stringMatching(/^(changed|missing)$/) }),
      )
    }
    expect(await sentences(all.kept.people)).toEqual([])
  },
)

describe.each(TABLES)('of %s', (table) => {
  const places = async (): Promise<string[]> => {
    const found = await all.attacker.places(table, all.trailOf(table))
    expect(found.length).toBeGreaterThan(0)
    return found
  }

  test('another value in any compared column is told, in the first row, the last and one between', async () => {
    for (const column of COVERED_TABLES[table].columns) {
      const last = (await places()).length - 1
      const tampered = [...new Set([0, Math.floor(last / 2), last])]
      // Rows changed together are told together; what points to another table takes the one row that is left there.
      const together = all.attacker.pointsElsewhere(table, column)
        ? tampered.map((index) => [index])
        : [tampered]
      for (const indexes of together) {
        const found = await places()
        const putBack: (() => Promise<void>)[] = []
        for (const index of indexes)
          putBack.push(await all.attacker.tamper(table, column, found[index] ?? ''))
        const { intact, stored } = await verdictOnStored(all.trailOf(table))
        for (const back of putBack) await back()
        expect(intact, `${column}, rows ${indexes}`).toBe(false)
        const told = stored.breaks.flatMap((one) =>
          (one.kind === 'changed' || one.kind === 'missing') && one.table === table
            ? [JSON.stringify([one.row, one.seq])]
            : [],
        )
        expect(new Set(told).size, `${column}, rows ${indexes}`).toBeGreaterThanOrEqual(indexes.length)
      }
    }
    expect(await sentences(all.trailOf(table))).toEqual([])
  })

  test('a row that is taken away is told', async () => {
    let removed = 0
    for (const index of (await places()).keys()) {
      const putBack = await all.attacker.remove(table, (await places())[index] ?? '')
      if (!putBack) continue
      removed += 1
      const { stored } = await verdictOnStored(all.trailOf(table))
      await putBack()
      expect(stored.breaks).toContainEqual(expect.objectContaining({ table, kind: 'missing' }))
    }
    // The database itself keeps what has rows.
    expect(removed).toBeGreaterThan(HAVE_TRAILS.includes(table) ? -1 : 0)
    expect(await sentences(all.trailOf(table))).toEqual([])
  })

  test('a row that no entry made is told', async () => {
    const takeAway = await all.attacker.add(table, (await places())[0] ?? '')
    // A row that names no trail, or begins one, may be told by any of them.
    const isTold = coveredTable(table).owner !== undefined && !HAVE_TRAILS.includes(table)
    const telling = isTold ? [all.trailOf(table)] : await subjects()
    const verdicts = await Promise.all(telling.map((trailId) => verdictOnStored(trailId)))
    await takeAway()
    const breaks = verdicts.flatMap(({ stored }) => stored.breaks)
    expect(breaks).toContainEqual(expect.objectContaining({ table, kind: 'unrecorded' }))
    expect(await sentences(all.trailOf(table))).toEqual([])
  })
})

const subjects = async (): Promise<string[]> => (await allTrails(eachAtItsMoment)).map((row) => row.id)
