import { describe, expect, test } from 'vitest'
import { callMeantBy } from '@/app/programmes/[code]/inspections/agreement/call-meant'
import { callsPasted } from '@/app/programmes/[code]/inspections/agreement/calls-pasted'
import { DEFECTS, rowsTyped } from '@/app/programmes/[code]/inspections/bench/defect-typed'

describe('a call as typed', () => {
  test.each([
    ['s', 'sound'],
    ['OK', 'sound'],
    ['Sound', 'sound'],
    ['br', 'bridge'],
    ['sb', 'solder ball'],
    ['i', 'i'],
    ['', ''],
  ])('“%s” is taken for “%s”', (typed, call) => expect(callMeantBy(typed)).toBe(call))
})

describe('calls pasted from a table', () => {
  test('by semicolon, tab or comma; headings passed over, the round the first unless said', () => {
    const text = [
      'Inspector; Joint; Call; Round; Known',
      'Iris Holm; S-1; bridge; 2; br',
      'Iris Holm\tS-2\ts',
      '"Iris Holm",S-3,hnf,,sound',
      '',
    ].join('\r\n')
    expect(callsPasted(text)).toEqual([
      { inspector: 'Iris Holm', joint: 'S-1', call: 'bridge', round: 2, reference: 'bridge' },
      { inspector: 'Iris Holm', joint: 'S-2', call: 'sound', round: 1 },
      { inspector: 'Iris Holm', joint: 'S-3', call: 'hole not filled', round: 1, reference: 'sound' },
    ])
  })
  test('what cannot be read is passed on, to be refused in its own words', () => {
    expect(callsPasted('Iris Holm; S-1; burnt; first')).toEqual([
      { inspector: 'Iris Holm', joint: 'S-1', call: 'burnt', round: Number.NaN },
    ])
    expect(callsPasted('Iris Holm')).toMatchObject([{ inspector: 'Iris Holm', joint: '', call: '' }])
  })
})

describe('the rows of defects at the bench', () => {
  const box = (at: number, field: string) => `${DEFECTS}.${at}.${field}`
  test('blank rows are left out, one with only a kind is not: it must say its joint', () => {
    expect(
      rowsTyped({
        [box(0, 'joint')]: ' ',
        [box(2, 'kind')]: 'void',
        [box(10, 'joint')]: 'T1-3',
        [box(10, 'xMm')]: '12',
        'inspections.0.note': 'seen twice',
      }),
    ).toEqual([
      { joint: '', kind: 'void', xMm: '', yMm: '', note: '' },
      { joint: 'T1-3', kind: '', xMm: '12', yMm: '', note: '' },
    ])
  })
})
