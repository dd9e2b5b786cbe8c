import fc from 'fast-check'
import { expect, test } from 'vitest'
import { tickedSignals, tickName } from '@/app/signals/ticked-signals'

test('law: what a box names comes back from the form, whatever the assembly is called', () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.array(fc.string({ unit: 'grapheme' }), { minLength: 1, maxLength: 3 }), {
        selector: (names) => names.join('|'),
      }),
      (signals) => {
        const form = new FormData()
        form.append('key', 'other')
        for (const names of signals) form.append(tickName(names), 'on')
        expect(tickedSignals(form)).toEqual(signals)
        for (const names of signals) expect(tickName(names)).not.toMatch(/["\r\n]/)
      },
    ),
  )
})

test('a name that was tampered with stays as it is', () => {
  const form = new FormData()
  form.append('signal:%E0%A4%A|x', 'on')
  expect(tickedSignals(form)).toEqual([['%E0%A4%A', 'x']])
})
