import { describe, expect, test } from 'vitest'
import { readingProblems } from '@/shared/records/check-readings'
import { bathComposition } from '@/shared/records/characteristics/bath-composition'
import { NO_RECORDS } from '@/shared/records/programme-records'
import type { Log } from '@/shared/records/log'
import { readingsFromRows } from '@/shared/records/readings-from-rows'
import { recordsWithReadings } from '@/shared/records/records-with-readings'
import { flagColumn, numberColumn, optionalColumn } from '@/shared/columns/column'

describe('readings given one by one', () => {
  test('are stored column by column, what is missing as an empty cell', () => {
    const readings = readingsFromRows([{ a: 1, b: 'x' }, { a: 2, c: true }, { c: false }])
    expect(readings).toEqual({
      count: 3,
      columns: { a: [1, 2, null], b: ['x', null, null], c: [null, 'yes', 'no'] },
    })
  })

  test('pass the check of readings when an optional column is nowhere filled in', () => {
    const columns = {
      a: numberColumn({ label: 'A', unit: 's', min: 0, max: 9 }),
      b: optionalColumn(numberColumn({ label: 'B', unit: 's', min: 0, max: 9 })),
    }
    expect(readingProblems(readingsFromRows([{ a: 1 }, { a: 2 }]), columns)).toEqual([])
  })

  test('that are shares of one whole come to no more than it', () => {
    const { columns, sharesOfWhole } = bathComposition
    const problems = (row: Record<string, number>) =>
      readingProblems(readingsFromRows([row]), columns, sharesOfWhole).map(({ message }) => message)
    // Each metal is analysed apart: the shares of one sample may come to a little more than 100 %.
    expect(problems({ tinPct: 63.2, leadPct: 37 })).toEqual([])
    expect(problems({ tinPct: 63, leadPct: 37, copperPct: 63 })).toEqual([
      'The shares come to 163 %, more than the whole.',
    ])
  })

  test('name columns that are declared, not what every object has', () => {
    const readings = { count: 1, columns: { constructor: [1] } }
    expect(readingProblems(readings, {})).toMatchObject([{ message: 'There is no column constructor.' }])
  })
})

describe('records with readings that are not stored yet', () => {
  const log = (code: string): Log => ({
    id: code,
    code,
    characteristic: 'bath-temperature',
    line: '1',
    machine: 'wave',
    instrumentId: null,
    readings: { count: 2, columns: { at: [1000, 3000], bathC: [247, 248] } },
  })
  const [one, other] = [log('ONE'), log('OTHER')]
  const before = { ...NO_RECORDS, logs: new Map([['bath-temperature', [one, other]]]) }
  const after = recordsWithReadings(before, one, readingsFromRows([{ at: 2000, bathC: 250 }]))

  test('hold them in order of time, in their own log only', () => {
    const [grown, same] = after.logs.get('bath-temperature') ?? []
    expect(grown?.readings.columns).toEqual({ at: [1000, 2000, 3000], bathC: [247, 250, 248] })
    expect(same).toBe(other)
  })

  test('leave what is stored as it was', () => {
    expect(before.logs.get('bath-temperature')?.[0]).toBe(one)
    expect(one.readings.count).toBe(2)
  })
})

test('a yes-or-no column takes yes and no, and nothing else', () => {
  const columns = { baked: flagColumn({ label: 'Baked' }) }
  const given = (cell: string | number | null) => ({ count: 1, columns: { baked: [cell] } })
  expect(['yes', 'no'].flatMap((cell) => readingProblems(given(cell), columns))).toEqual([])
  for (const cell of ['maybe', 'true', '', 1])
    expect(readingProblems(given(cell), columns)).toMatchObject([
      { reading: 1, message: 'Baked is yes or no.' },
    ])
  expect(readingProblems(given(null), columns)).toHaveLength(1)
})
