import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readingsForRuns } from '@/shared/logs/readings-for-runs'
import { runDaysOf } from '@/shared/logs/run-days'
import type { Speaks } from '@/shared/records/characteristic'

/*
 * Which readings of a shared machine say something about one programme's boards. A rule of ours, no published source:
 * the cases are worked by hand.
 */

const UTC = { timeZone: 'UTC' }
const readingsAt = (...instants: string[]) => ({
  count: instants.length,
  columns: { at: instants.map((at) => Date.parse(`${at}Z`)), bathC: instants.map((_, index) => 240 + index) },
})
const MONDAY = '2026-03-02'
const read = readingsAt(
  '2026-02-27T15:00',
  '2026-03-02T07:00',
  '2026-03-02T13:00',
  '2026-03-03T07:00',
  '2026-03-05T07:00',
)
const counted = (speaks: Speaks, ...days: { day: string; begunAt?: string }[]) =>
  readingsForRuns(
    read,
    days.map(({ day, begunAt }) => ({
      day,
      begunAt: begunAt === undefined ? undefined : Date.parse(`${begunAt}Z`),
    })),
    speaks,
    UTC,
  ).columns['bathC']

describe('of the day of a run', () => {
  test('the readings of that day count, whatever was read on others', () => {
    expect(counted('of the day of a run', { day: MONDAY })).toEqual([241, 242])
  })

  test('where the day has none, the newest before it does', () => {
    expect(counted('of the day of a run', { day: '2026-03-04' })).toEqual([243])
    expect(counted('of the day of a run', { day: '2026-02-20' })).toEqual([])
  })

  test('a run that began before the day’s first reading rests on the newest before', () => {
    expect(counted('of the day of a run', { day: MONDAY, begunAt: '2026-03-02T06:00' })).toEqual([
      240, 241, 242,
    ])
    expect(counted('of the day of a run', { day: MONDAY, begunAt: '2026-03-02T08:00' })).toEqual([241, 242])
  })

  test('without a run nothing counts', () => {
    expect(counted('of the day of a run')).toEqual([])
  })

  test('the day is that of the works’ clock', () => {
    const late = readingsAt('2026-03-02T23:30')
    const inTokyo = readingsForRuns(
      late,
      [{ day: '2026-03-03', begunAt: undefined }],
      'of the day of a run',
      {
        timeZone: 'Asia/Tokyo',
      },
    )
    expect(inTokyo.count).toBe(1)
  })
})

test('an analysis or a check stands for the work up to the next: the one before and the one after count too', () => {
  expect(counted('until the next', { day: MONDAY })).toEqual([240, 241, 242, 243])
  expect(counted('until the next', { day: '2026-03-04' })).toEqual([243, 244])
})

test('a course counts up to the first after the last run', () => {
  expect(counted('as a course', { day: MONDAY })).toEqual([240, 241, 242, 243])
  expect(counted('as a course')).toEqual([])
})

test('what speaks always counts without a run', () => {
  expect(counted('always')).toEqual([240, 241, 242, 243, 244])
})

type Run = Parameters<typeof runDaysOf>[1][number]
const run = (over: Partial<Run> & Pick<Run, 'doneOn'>): Run => ({
  line: undefined,
  begunAtH: undefined,
  ...over,
})

describe('the days of runs', () => {
  const log = { line: 'Line 1', machine: 'Wave 1', timeZone: 'UTC' }
  test('are those on the log’s line or machine, or on a line that is not named', () => {
    const runs = [
      run({ doneOn: '2026-03-04', line: 'line  1' }),
      run({ doneOn: '2026-03-03', line: 'Wave 1' }),
      run({ doneOn: '2026-03-02' }),
      run({ doneOn: '2026-03-01', line: 'Line 2' }),
    ]
    expect(runDaysOf(log, runs).map(({ day }) => day)).toEqual(['2026-03-02', '2026-03-03', '2026-03-04'])
  })

  test('know the earliest hour that a run of the day states', () => {
    const runs = [
      run({ doneOn: MONDAY, begunAtH: 9 }),
      run({ doneOn: MONDAY }),
      run({ doneOn: MONDAY, begunAtH: 6.5 }),
    ]
    expect(runDaysOf(log, runs)).toEqual([{ day: MONDAY, begunAt: Date.parse('2026-03-02T06:30Z') }])
  })
})

test('law: more runs never take a reading away, and none is counted twice', () => {
  const day = fc.integer({ min: 1, max: 9 }).map((of) => ({ day: `2026-03-0${of}`, begunAt: undefined }))
  const speaks = fc.constantFrom<Speaks>('of the day of a run', 'until the next', 'as a course', 'always')
  const some = fc.uniqueArray(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 12 })
  fc.assert(
    fc.property(some, fc.array(day, { maxLength: 4 }), day, speaks, (hours, days, extra, how) => {
      const at = [...hours]
        .sort((a, b) => a - b)
        .map((of) => Date.parse('2026-03-01T00:00Z') + of * 12 * 3_600_000)
      const readings = { count: at.length, columns: { at } }
      const inOrder = (all: typeof days) => [...all].sort((a, b) => (a.day < b.day ? -1 : 1))
      const counting = (all: typeof days) =>
        readingsForRuns(readings, inOrder(all), how, UTC).columns['at'] ?? []
      const [few, more] = [counting(days), counting([...days, extra])]
      expect(new Set(more).size).toBe(more.length)
      if (how === 'until the next' || how === 'as a course' || how === 'always')
        for (const one of few) expect(more).toContain(one)
      else
        for (const one of few.filter((each) =>
          days.some(({ day: of }) => new Date(Number(each)).toISOString().startsWith(of)),
        ))
          expect(more).toContain(one)
    }),
  )
})
