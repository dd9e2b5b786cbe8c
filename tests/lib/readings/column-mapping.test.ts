import { describe, expect, test } from 'vitest'
import { suggestMapping } from '@/lib/readings/column-mapping'
import { fieldsOf, INSTANT_FIELD } from '@/lib/readings/reading-field'
import {
  choiceColumn,
  dateColumn,
  flagColumn,
  numberColumn,
  optionalColumn,
  textColumn,
} from '@/shared/columns/column'

const climate = fieldsOf({
  temperatureC: numberColumn({ label: 'Temperature', unit: '°C', min: -40, max: 80 }),
  relativeHumidityPct: numberColumn({ label: 'Relative humidity', unit: '% RH', min: 0, max: 100 }),
})

describe('headings suggested for fields', () => {
  test.each([
    [['Time', 'Temperature', 'Relative humidity']],
    [['time (UTC)', 'TEMPERATURE [°C]', 'relative_humidity']],
    [['timestamp', 'temperatureC', 'relativeHumidityPct']],
    [['Relative humidity in %', 'Mean temperature', 'Date and time']],
  ])('%j', (headings) => {
    const mapping = suggestMapping(headings, [INSTANT_FIELD, ...climate])
    expect(Object.keys(mapping).sort()).toEqual(['at', 'relativeHumidityPct', 'temperatureC'])
    expect(new Set(Object.values(mapping))).toEqual(new Set(headings))
    expect(mapping['temperatureC']).toMatch(/temperature/i)
  })

  test('the closer heading wins, and none is used twice', () => {
    const fields = fieldsOf({
      force: numberColumn({ label: 'Force', unit: 'mN', min: -1, max: 1 }),
      forceAt2s: numberColumn({ label: 'Force at 2 s', unit: 'mN', min: -1, max: 1 }),
    })
    expect(suggestMapping(['Force at 2 s', 'Force'], fields)).toEqual({
      force: 'Force',
      forceAt2s: 'Force at 2 s',
    })
    expect(suggestMapping(['Force'], fields)).toEqual({ force: 'Force' })
  })

  test('what fits no heading is left out', () => {
    expect(suggestMapping(['a', '', 'b'], climate)).toEqual({})
    expect(suggestMapping([], climate)).toEqual({})
  })
})

test('the fields that a record’s columns ask for', () => {
  expect(
    fieldsOf({
      joints: numberColumn({ label: 'Joints', unit: 'joints', min: 1, max: 9, whole: true }),
      specimen: optionalColumn(textColumn({ label: 'Specimen', maxLength: 40 })),
      found: choiceColumn({ label: 'Found', options: [{ value: 'in', label: 'Within' }] }),
      on: dateColumn({ label: 'On' }),
    }),
  ).toEqual([
    {
      name: 'joints',
      label: 'Joints',
      required: true,
      kind: 'number',
      min: 1,
      max: 9,
      whole: true,
      unit: 'joints',
    },
    { name: 'specimen', label: 'Specimen', required: false, kind: 'text', maxLength: 40 },
    {
      name: 'found',
      label: 'Found',
      required: true,
      kind: 'choice',
      options: [{ value: 'in', label: 'Within' }],
    },
    { name: 'on', label: 'On', required: true, kind: 'date' },
  ])
  expect(() => fieldsOf({ ok: flagColumn({ label: 'Passed' }) })).toThrow(RangeError)
})
