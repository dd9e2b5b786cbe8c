import { expect, test } from 'vitest'
import { lotNames } from '@/shared/works/lot-name'

const at = (kind: string, code: string) => ({ kind, code })

test('a lot has its code; one of another programme, and a second of the same code, says where it is recorded', () => {
  const names = lotNames(
    [
      { id: '1', code: 'R-1', recordedIn: at('programme', 'LX-41') },
      { id: '2', code: 'R-1', recordedIn: at('supplier', 'Northgate') },
      { id: '3', code: 'r-2', recordedIn: at('supplier', 'Southgate') },
      { id: '4', code: 'R-2', recordedIn: at('supplier', 'Northgate') },
      { id: '5', code: 'R-3', recordedIn: at('programme', 'PX-12') },
    ],
    'LX-41',
  )
  expect([...names.values()]).toEqual(['R-1', 'R-1 · Northgate', 'r-2', 'R-2 · Northgate', 'R-3 · PX-12'])
})

test('what comes later changes no name that was given', () => {
  const first = [{ id: '1', code: 'R-1', recordedIn: at('supplier', 'Northgate') }]
  const later = [...first, { id: '2', code: 'R-1', recordedIn: at('supplier', 'Southgate') }]
  expect(lotNames(later).get('1')).toBe(lotNames(first).get('1'))
})
