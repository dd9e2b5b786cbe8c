import { describe, expect, test } from 'vitest'
import { loadReadings } from '@/lib/programme/readings-cache'
import type { Readings } from '@/shared/records/readings'

/** A database of these batches only, which counts how often it is asked. */
function batchesOf(stored: Readonly<Record<string, Readings>>) {
  const asked: string[][] = []
  const db = {
    readingBatch: {
      findMany: async ({ where }: { where: { id: { in: string[] } } }) => {
        asked.push(where.id.in)
        return where.id.in.map((id) => ({ id, readings: stored[id] }))
      },
    },
  } as unknown as Parameters<typeof loadReadings>[0]
  return { db, asked }
}
const rowOf = (id: string) => ({ id, trailId: 'a trail', lotTestId: null, logId: `log of ${id}` })
const many = (count: number, at: number): Readings => ({
  count,
  columns: Object.fromEntries(
    ['at', 'a', 'b', 'c', 'd', 'e'].map((name) => [name, Array<number>(count).fill(at)]),
  ),
})

describe('readings kept in memory', () => {
  test('a programme with more readings than are kept still reads all of them', async () => {
    const { db } = batchesOf({
      first: many(1_500_000, 1),
      second: many(1_500_000, 2),
      third: many(1_500_000, 3),
    })
    const read = await loadReadings(db, ['first', 'second', 'third'].map(rowOf))
    expect(['first', 'second', 'third'].map((id) => read.ofLog(`log of ${id}`).count)).toEqual([
      1_500_000, 1_500_000, 1_500_000,
    ])
  })

  test('what is kept is not asked for again, and is the same object', async () => {
    const { db, asked } = batchesOf({ kept: many(3, 1) })
    const before = (await loadReadings(db, [rowOf('kept')])).ofLog('log of kept')
    const now = (await loadReadings(db, [rowOf('kept')])).ofLog('log of kept')
    expect(now).toBe(before)
    expect(asked).toEqual([['kept']])
  })
})
