import { describe, expect, test } from 'vitest'
import { instrumentUses } from '@/shared/instruments/instrument-uses'
import { NO_RECORDS } from '@/shared/records/programme-records'
import { lot, rotaryDip, timer } from '../lots-builder'

const spare = { ...timer, id: 'i-spare', tag: 'T-08' }
const records = {
  ...NO_RECORDS,
  instruments: [timer, spare, { ...timer, id: 'i-idle', tag: 'T-09' }],
  lots: [
    lot({
      tests: [
        rotaryDip([1]),
        rotaryDip([1], { id: 'late', testedOn: '2026-08-01' }),
        rotaryDip([1], { id: 'none', instrumentId: null }),
      ],
    }),
  ],
  byKind: new Map([
    [
      'gauge-reading',
      [{ id: 'g', study: 'S-1', instrumentTag: 'T-08', part: '1', appraiser: 'A', trial: 1, reading: 1 }],
    ],
  ]),
}

describe('what rests on an instrument', () => {
  const [first, second, ...rest] = instrumentUses(records)
  test('names its tests, each with its calibration on that day', () => {
    expect(first?.instrument.tag).toBe('T-07')
    expect(first?.tests.map(({ status }) => status.stands)).toEqual([true, false])
  })
  test('an instrument that was only studied is in use, one that nothing names is not', () => {
    expect(second).toMatchObject({ instrument: { tag: 'T-08' }, tests: [], studies: ['S-1'] })
    expect(rest).toEqual([])
  })
})
