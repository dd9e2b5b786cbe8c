import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Delimiter } from '@/lib/readings/delimiter'
import { cellRule } from '@/lib/readings/read-cell'
import { INSTANT_FIELD, type ReadingField } from '@/lib/readings/reading-field'
import type { FileForm } from '@/lib/readings/file-form'

const formOf = (delimiter: Delimiter): FileForm => ({
  delimiter,
  decimal: delimiter === ';' ? ',' : '.',
  dates: 'year first',
  timeZone: 'UTC',
})

const density: ReadingField = { name: 'd', label: 'Density', kind: 'number', required: true }

describe('numbers', () => {
  test.each<[Delimiter, string, number | undefined]>([
    [',', '0.823', 0.823],
    [',', '-12', -12],
    [',', '+.5', 0.5],
    [',', '5.', 5],
    [',', '1e-3', 0.001],
    [',', '1.5E+2', 150],
    [',', '0,823', undefined],
    ['\t', '0,823', undefined],
    [';', '0,823', 0.823],
    [';', '0.823', 0.823],
    [';', '-1,5e2', -150],
    // Points between thousands can be nothing else before a comma.
    [';', '1.234,5', 1234.5],
    [';', '1.234', undefined],
    [';', '1,234,567', undefined],
    [',', '1 234', undefined],
    [',', '0x10', undefined],
    [',', '1_000', undefined],
    [',', 'NaN', undefined],
    [',', 'Infinity', undefined],
    [',', '1e999', undefined],
    [',', '.', undefined],
    [',', '-', undefined],
    [',', 'e5', undefined],
    [',', '12 °C', undefined],
    [',', '٣', undefined],
  ])('separator %j: %j is %s', (delimiter, text, number) => {
    expect(cellRule(density, formOf(delimiter)).read(text)).toBe(number)
  })

  test('minus zero is zero, which the record can hold', () => {
    expect(Object.is(cellRule(density, formOf(',')).read('-0.0'), 0)).toBe(true)
  })

  test('limits belong to the field, and are named', () => {
    const rule = cellRule({ ...density, min: 0.5, max: 1.5, unit: 'g/ml' }, formOf(','))
    expect(['0.4999', '0.5', '1.5', '1.5001'].map(rule.read)).toEqual([undefined, 0.5, 1.5, undefined])
    expect(rule.expected).toBe('a number such as 0.82 from 0.5 to 1.5 g/ml')
    const count = cellRule({ ...density, min: 0, whole: true }, formOf(';'))
    expect(['3', '3,0', '3,5', '-1'].map(count.read)).toEqual([3, 3, undefined, undefined])
    expect(count.expected).toBe('a whole number, 0 or more')
  })

  test('law: every number reads back as written, with point or comma', () => {
    fc.assert(
      fc.property(fc.double({ noDefaultInfinity: true, noNaN: true }), (number) => {
        const text = String(number)
        expect(cellRule(density, formOf(',')).read(text)).toBe(number + 0)
        expect(cellRule(density, formOf(';')).read(text.replace('.', ','))).toBe(number + 0)
      }),
    )
  })
})

describe('instants', () => {
  const { read } = cellRule(INSTANT_FIELD, formOf(','))
  test.each<[string, string | undefined]>([
    ['2026-03-04T10:11:12Z', '2026-03-04T10:11:12.000Z'],
    ['2026-03-04T11:11:12.5+01:00', '2026-03-04T10:11:12.500Z'],
    ['2026-03-04 10:11', '2026-03-04T10:11:00.000Z'],
    ['2026-03-04 10:11:12', '2026-03-04T10:11:12.000Z'],
    ['2026-03-04 10:11:12.25', '2026-03-04T10:11:12.250Z'],
    ['2024-02-29 00:00', '2024-02-29T00:00:00.000Z'],
    ['2026-02-29 00:00', undefined],
    ['2026-03-04 24:00', undefined],
    ['2026-03-04 10:60', undefined],
    // Without a zone this form is read as local time by some and as UTC by others.
    ['2026-03-04T10:11:12', undefined],
    ['2026-03-04', undefined],
    ['04.03.2026 10:11', undefined],
    ['3/4/2026 10:11', undefined],
    ['1772618472', undefined],
  ])('%s: %s', (text, iso) => {
    expect(read(text)).toBe(iso === undefined ? undefined : Date.parse(iso))
  })
})

test('dates, text and choices', () => {
  const common = { name: 'x', label: 'X', required: true } as const
  const date = cellRule({ ...common, kind: 'date' }, formOf(','))
  expect(['2026-03-04', '2026-02-29', '4.3.2026', '2026-3-4'].map(date.read)).toEqual([
    '2026-03-04',
    undefined,
    undefined,
    '2026-03-04',
  ])
  const text = cellRule({ ...common, kind: 'text', maxLength: 3 }, formOf(','))
  expect(['abc', 'abcd'].map(text.read)).toEqual(['abc', undefined])
  const options = [
    { value: 'hand', label: 'Hand soldering' },
    { value: 'wave', label: 'Wave' },
  ]
  const choice = cellRule({ ...common, kind: 'choice', options }, formOf(','))
  expect(['hand', 'HAND SOLDERING', 'wave', 'dip'].map(choice.read)).toEqual([
    'hand',
    'hand',
    'wave',
    undefined,
  ])
  expect(choice.expected).toBe('one of: Hand soldering, Wave')
})
