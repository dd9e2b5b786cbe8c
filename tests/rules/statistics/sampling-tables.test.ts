import { describe, expect, test } from 'vitest'
import { ACCEPTANCE_QUALITY_LIMITS, asFraction } from '@/shared/statistics/sampling/acceptance-quality-limit'
import { CODE_LETTERS, INSPECTION_LEVELS, LOT_BANDS } from '@/shared/statistics/sampling/code-letters'
import { codeLetterFor, type CodeLetter } from '@/shared/statistics/sampling/code-letters'
import { doublePlan, judgeBothSamples, judgeFirstSample } from '@/shared/statistics/sampling/double-plan'
import { readPlanTable } from '@/shared/statistics/sampling/plan-table'
import {
  judgeCount,
  SEVERITIES,
  singlePlan,
  singlePlanForLot,
} from '@/shared/statistics/sampling/single-plan'
import { SINGLE_NORMAL } from '@/shared/statistics/sampling/single-plan-tables'
import tables from '@/tests/reference/statistics/sampling-tables.json'

const single = {
  normal: tables.singleNormal,
  tightened: tables.singleTightened,
  reduced: tables.singleReduced,
}
const double = {
  normal: tables.doubleNormal,
  tightened: tables.doubleTightened,
  reduced: tables.doubleReduced,
}
const everyCell = CODE_LETTERS.flatMap((letter) =>
  ACCEPTANCE_QUALITY_LIMITS.map((limit) => ({ letter, limit })),
)

describe('code letters', () => {
  // MIL-STD-105E table I, read in two transcriptions, equal in all 105 cells.
  test('all 105 cells, at both ends of every band', () => {
    expect(INSPECTION_LEVELS).toEqual(tables.codeLetters.levels)
    for (const band of tables.codeLetters.rows) {
      const found = (lot: number) => INSPECTION_LEVELS.map((level) => codeLetterFor(lot, level))
      expect(found(band.from), `lot ${band.from}`).toEqual(band.letters)
      expect(found(band.to ?? 10_000_000), `lot ${band.to}`).toEqual(band.letters)
    }
  })
  test('the bands rise, leave no gap and end open', () => {
    const ends = LOT_BANDS.map(({ lotUpTo }) => lotUpTo)
    expect(ends).toEqual([...ends].sort((a, b) => a - b))
    expect(new Set(ends).size).toBe(15)
    expect(ends.at(-1)).toBe(Infinity)
    expect(tables.codeLetters.rows.map((row) => row.from)).toEqual([
      2,
      ...ends.slice(0, -1).map((end) => end + 1),
    ])
  })
  test('the letter never falls with the lot, nor with the level among I to III and among S-1 to S-4', () => {
    const index = (letter: string) => CODE_LETTERS.indexOf(letter as CodeLetter)
    LOT_BANDS.forEach(({ letters }, row) => {
      expect(letters).toHaveLength(7)
      ;[...letters].forEach((letter, level) => {
        expect(index(letter)).toBeGreaterThanOrEqual(0)
        if (row > 0) expect(index(letter)).toBeGreaterThanOrEqual(index(LOT_BANDS[row - 1]!.letters[level]!))
        if (level % 4 > 0) expect(index(letter)).toBeGreaterThanOrEqual(index(letters[level - 1]!))
      })
    })
  })
  test.each([1, 0, -5, 2.5, NaN])('a lot of %s is refused', (lot) => {
    expect(() => codeLetterFor(lot, 'II')).toThrow('lot size must be a whole number of 2 or more')
  })
})

describe('acceptance quality limits', () => {
  test('26 columns, as in the reading, rising', () => {
    expect(ACCEPTANCE_QUALITY_LIMITS).toEqual(tables.limits)
    const numbers = ACCEPTANCE_QUALITY_LIMITS.map(Number)
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b))
  })
  test('a percentage up to 10, defects per hundred above', () => {
    expect(asFraction('0.65')).toBeCloseTo(0.0065, 15)
    expect(asFraction('10')).toBe(0.1)
    expect(() => asFraction('15')).toThrow('defects per hundred units')
  })
})

describe('single plans', () => {
  // MIL-STD-105E tables II-A, II-B, II-C, read in transcriptions with the arrows resolved.
  test.each(SEVERITIES)('all 416 cells, %s', (severity) => {
    for (const { letter, limit } of everyCell) {
      const [sampleSize, accept, reject] =
        single[severity].plans[letter][ACCEPTANCE_QUALITY_LIMITS.indexOf(limit)]!
      expect(singlePlan(letter, limit, severity), `${letter} ${limit}`).toEqual({
        sampleSize,
        accept,
        reject,
      })
    }
  })
  test('rejection follows acceptance at once, but for the gap of reduced plans', () => {
    for (const { letter, limit } of everyCell) {
      for (const severity of ['normal', 'tightened'] as const) {
        const plan = singlePlan(letter, limit, severity)
        expect(plan.reject).toBe(plan.accept + 1)
      }
      const reduced = singlePlan(letter, limit, 'reduced')
      expect(reduced.reject).toBeGreaterThan(reduced.accept)
    }
  })
  test('tightened asks at least as much as normal: no larger share accepted', () => {
    for (const { letter, limit } of everyCell) {
      const normal = singlePlan(letter, limit, 'normal')
      const tightened = singlePlan(letter, limit, 'tightened')
      const harder =
        tightened.accept < normal.accept ||
        (tightened.accept === normal.accept && tightened.sampleSize >= normal.sampleSize)
      expect(harder, `${letter} ${limit}`).toBe(true)
    }
  })
  // The build of the table: sample size and limit are both geometric, so one letter down and one
  // column to the left carry the same acceptance number. It shows a slip of a single cell.
  test('plans in the table’s own rows agree along the diagonal', () => {
    const own = (letter: CodeLetter, column: number) => {
      const rows = SINGLE_NORMAL.trim()
        .split('\n')
        .map((line) => line.split(/ +/))
      return rows.find((row) => row[0] === letter)![column + 2]!
    }
    for (let row = 1; row < CODE_LETTERS.length; row++) {
      for (let column = 1; column < ACCEPTANCE_QUALITY_LIMITS.length; column++) {
        const above = own(CODE_LETTERS[row - 1]!, column)
        const here = own(CODE_LETTERS[row]!, column - 1)
        if (above.includes('/') && here.includes('/')) expect(here).toBe(above)
      }
    }
  })

  // By the tables: lot 1200 at level II is J; 80 2/3 at 1.0 normal, 80 1/2 tightened, 32 1/3 reduced.
  test('a lot of 1200 at 1.0', () => {
    const lot = { lotSize: 1200, level: 'II', limit: '1.0' } as const
    expect(singlePlanForLot({ ...lot, severity: 'normal' })).toEqual({
      letter: 'J',
      sampleSize: 80,
      accept: 2,
      reject: 3,
      everyUnit: false,
    })
    expect(singlePlanForLot({ ...lot, severity: 'tightened' })).toMatchObject({ sampleSize: 80, accept: 1 })
    expect(singlePlanForLot({ ...lot, severity: 'reduced' })).toMatchObject({
      sampleSize: 32,
      accept: 1,
      reject: 3,
    })
  })
  test('where the arrow asks for more than the lot, every unit is inspected', () => {
    const plan = singlePlanForLot({ lotSize: 20, level: 'II', limit: '0.10', severity: 'normal' })
    expect(plan).toEqual({ letter: 'C', sampleSize: 20, accept: 0, reject: 1, everyUnit: true })
    const equal = singlePlanForLot({ lotSize: 13, level: 'II', limit: '1.0', severity: 'normal' })
    expect(equal).toMatchObject({ sampleSize: 13, everyUnit: true })
  })
  test('tightened at 0.025 reaches the row S of 3150', () => {
    expect(singlePlan('R', '0.025', 'tightened')).toEqual({ sampleSize: 3150, accept: 1, reject: 2 })
  })
  test('a count is accepted, rejected or in the gap', () => {
    const reduced = singlePlan('J', '1.0', 'reduced')
    expect([0, 1, 2, 3].map((count) => judgeCount(reduced, count))).toEqual([
      'accepted',
      'accepted',
      'accepted in the gap',
      'rejected',
    ])
    expect(judgeCount(singlePlan('J', '1.0', 'normal'), 3)).toBe('rejected')
    expect(() => judgeCount(reduced, NaN)).toThrow(RangeError)
  })
  test('a letter or column that is not there is refused', () => {
    expect(() => readPlanTable(SINGLE_NORMAL, 'I', '1.0')).toThrow('no row for letter I')
    expect(() => readPlanTable(SINGLE_NORMAL, 'J', '1.1')).toThrow('no column for AQL 1.1')
    expect(() => readPlanTable('letter n 1.0\nA 2 ↓', 'A', '1.0')).toThrow('leads out of the table')
  })
})

describe('double plans', () => {
  // MIL-STD-105E tables III-A, III-B, III-C, read in one transcription. It prints 26/26 for letters L to P
  // at AQL 100 normal; the letters around, reaching the same plan, have 26/27.
  test.each(SEVERITIES)('all 416 cells, %s', (severity) => {
    for (const { letter, limit } of everyCell) {
      const row = double[severity].plans[letter][ACCEPTANCE_QUALITY_LIMITS.indexOf(limit)]
      const plan = doublePlan(letter, limit, severity)
      if (!row) {
        expect(plan, `${letter} ${limit}`).toBeUndefined()
        continue
      }
      const slip = severity === 'normal' && 'LMNP'.includes(letter) && limit === '100'
      expect(plan, `${letter} ${limit}`).toEqual({
        firstSize: row[0],
        firstAccept: row[1],
        firstReject: row[2],
        secondSize: row[3],
        secondAccept: row[4],
        secondReject: slip ? 27 : row[5],
      })
    }
  })
  test('the second decision continues the first', () => {
    for (const severity of SEVERITIES) {
      for (const { letter, limit } of everyCell) {
        const plan = doublePlan(letter, limit, severity)
        if (!plan) continue
        expect(plan.firstReject).toBeGreaterThan(plan.firstAccept + 1)
        expect(plan.secondReject).toBeGreaterThan(plan.secondAccept)
        expect(plan.secondAccept).toBeGreaterThanOrEqual(plan.firstAccept)
        if (severity !== 'reduced') expect(plan.secondReject).toBe(plan.secondAccept + 1)
      }
    }
  })
  // Letter J at 1.5 normal: 50, 1/4; 50 more, 4/5 together.
  test('a first count between the numbers calls for the second sample', () => {
    const plan = doublePlan('J', '1.5', 'normal')!
    expect(plan).toMatchObject({
      firstSize: 50,
      firstAccept: 1,
      firstReject: 4,
      secondAccept: 4,
      secondReject: 5,
    })
    expect(judgeFirstSample(plan, 1)).toBe('accepted')
    expect(judgeFirstSample(plan, 3)).toBe('draw the second sample')
    expect(judgeFirstSample(plan, 4)).toBe('rejected')
    expect(judgeBothSamples(plan, 4)).toBe('accepted')
    expect(judgeBothSamples(plan, 5)).toBe('rejected')
    expect(judgeBothSamples(doublePlan('J', '1.0', 'reduced')!, 1)).toBe('accepted in the gap')
    expect(() => judgeFirstSample(plan, -1)).toThrow(RangeError)
  })
})
