import { describe, expect, test } from 'vitest'
import { assembliesOnRecord, assemblyLife } from '@/shared/records/assembly-life'
import type { Inspection } from '@/shared/records/inspection'
import { NO_RECORDS } from '@/shared/records/programme-records'
import { namesSerial } from '@/shared/records/serials-in-text'
import { accepted, lot, rotaryDip } from '../lots-builder'

describe('a serial number in a text', () => {
  test.each([
    ['LX41-0002', true],
    ['lx41-0002', true],
    ['LX41-0001 to LX41-0024', true],
    ['LX41-0001–LX41-0024', true],
    ['LX41-0001 to 0024', true],
    ['LX41-0009, LX41-0002', true],
    ['LX41-0009 LX41-0002', true],
    ['LX41-0003 to LX41-0024', false],
    ['LX41-00021', false],
    ['PX12-0001 to PX12-0024', false],
    ['LX41-001 to LX41-024', false],
    ['', false],
  ])('%s', (text, names) => {
    expect(namesSerial(text, 'LX41-0002')).toBe(names)
  })
})

const look: Inspection = {
  id: 'look',
  assembly: 'lx41-0002',
  inspectedOn: '2026-04-03',
  inspector: 'Q. Ash',
  magnification: 4,
  jointsSeen: 400,
  defects: [{ kind: 'bridge', joint: 'U1-3' }],
  note: '',
}
const records = {
  ...NO_RECORDS,
  lots: [
    lot({ tests: [rotaryDip([1])], disposition: accepted, usedIn: ['LX41-0002', 'LX41-0010'] }),
    lot({ id: 'other', code: 'B-02', usedIn: ['LX41-0003'] }),
  ],
  inspections: [look],
  byKind: new Map<string, readonly { readonly id: string; readonly [name: string]: unknown }[]>([
    [
      'soldering-run',
      [
        {
          id: 'r',
          doneOn: '2026-04-01',
          worker: 'P. Hill',
          skill: 'wave',
          assemblies: 9,
          serials: 'LX41-0001 to LX41-0009',
        },
      ],
    ],
    ['rework', [{ id: 'w', doneOn: '2026-04-04', assembly: 'LX41-0002', joint: 'U1-3', defect: 'bridge' }]],
    ['electrical-test', [{ id: 'e', testedOn: '2026-04-05', assembly: 'batch 1', tested: 9 }]],
  ]),
}

describe('the life of an assembly', () => {
  const life = assemblyLife(records, 'LX41-0002')!
  test('holds the lots it is made of and no others', () => {
    expect(life.lots.map(({ code }) => code)).toEqual(['B-01'])
  })
  test('runs from the delivery of its lots to what was done to it last', () => {
    expect(life.events.map(({ on, what }) => `${on} ${what}`)).toEqual([
      '2026-02-02 Lot B-01 received',
      '2026-02-09 Lot B-01 tested',
      '2026-02-10 Lot B-01 accepted',
      '2026-04-01 Soldering run',
      '2026-04-03 Inspected',
      '2026-04-04 Rework',
    ])
    expect(life.events[4]?.message).toContain('bridge at U1-3')
    expect(life.events[5]?.message).toBe('joint U1-3, because of bridge')
  })
  test('nothing on record is nothing to show', () => {
    expect(assemblyLife(records, 'LX41-9999')).toBeUndefined()
    expect(assemblyLife(records, 'batch 1')?.events).toHaveLength(1)
  })
  test('every serial number once, 3 before 10; a batch is no assembly', () => {
    expect(assembliesOnRecord(records)).toEqual(['LX41-0002', 'LX41-0003', 'LX41-0010'])
  })
})
